package faintwind.calibration.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Series;
import faintwind.message.Checked;
import faintwind.message.Problem;
import org.junit.jupiter.api.Test;

/** By hand: straight lines of the last five minutes, and a time constant of 500 s. */
class SettledLevelTest {
  private static Checked<SettledLevel> in(Series signal) {
    return SettledLevel.in(signal, 500);
  }

  private static Problem refused(Series signal) {
    return in(signal).problems().get(0);
  }

  @Test
  void theLevelIsTheMeanOfTheLastFiveMinutes() {
    Series level = MadeRuns.series(0, 10, 600, t -> t < 300 ? 99 : 20);
    SettledLevel found = ((Checked.Ok<SettledLevel>) in(level)).value();
    assertThat(found.mean()).isCloseTo(20, within(1e-9));
  }

  /** At a level of 20 a slope of 0.0004 a second leaves 0.2, the hundredth that is allowed. */
  @Test
  void aHundredthMayBeLeft() {
    Series nearly = MadeRuns.series(0, 10, 300, t -> 20 + 0.00039 * (t - 150));
    assertThat(in(nearly).isOk()).isTrue();
    Series falling = MadeRuns.series(0, 10, 300, t -> 20 - 0.00041 * (t - 150));
    assertThat(refused(falling).id()).isEqualTo("bench.not-settled");
  }

  /** A slope of 0.004 leaves 2 of 20, ten hundredths: 500 s · ln 10 = 1151 s, 19 minutes. */
  @Test
  void oneIsToldHowLongToWait() {
    Problem problem = refused(MadeRuns.series(0, 10, 300, t -> 20 + 0.004 * (t - 150)));
    assertThat(problem.found()).startsWith("10");
    assertThat(problem.details()).containsExactly("19");
    Problem soon = refused(MadeRuns.series(0, 10, 300, t -> 20 + 0.00041 * (t - 150)));
    assertThat(soon.details()).as("a minute at least").containsExactly("1");
  }

  @Test
  void fiveMinutesAndFiveRowsAreNeeded() {
    assertThat(refused(MadeRuns.series(0, 10, 290, t -> 20)).id())
        .isEqualTo("bench.level-too-short");
    assertThat(in(MadeRuns.series(0, 10, 300, t -> 20)).isOk()).isTrue();
    assertThat(refused(MadeRuns.series(0, 100, 300, t -> 20)).id())
        .isEqualTo("bench.level-too-short");
    assertThat(in(MadeRuns.series(0, 75, 300, t -> 20)).isOk()).isTrue();
    assertThat(refused(Series.of(new double[0], new double[0])).found()).isEqualTo("0");
  }
}
