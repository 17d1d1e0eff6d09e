package faintwind.calibration.fit.health;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalUnit;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: tables of a few rows, each with one thing missing. */
class DataCheckTest {
  private static final Run STILL = still("still", 0);

  private static Series series(double more) {
    return MadeRuns.series(0, 10, 600, t -> 20 + more + t / 1000);
  }

  private static Run still(String name, double more) {
    return MadeRuns.still(name, series(more));
  }

  private static Run spin(String name, double more) {
    return MadeRuns.spin(name, series(more), MadeRuns.arm(200, 500, 60, 300));
  }

  private static List<String> refused(Run... runs) {
    return DataCheck.refusals(MadeRuns.set(runs)).stream()
        .map(p -> p.id() + " " + p.where().run().orElse("") + "[" + String.join(", ", all(p)) + "]")
        .toList();
  }

  private static List<String> all(Problem problem) {
    List<String> all = new ArrayList<>(problem.details());
    all.add(0, problem.found());
    return all;
  }

  @Test
  void oneSpinNeedsTwoRunsBeside() {
    assertThat(refused(STILL, spin("a", 1), still("end", 2))).isEmpty();
    assertThat(refused(STILL, spin("a", 1))).containsExactly("fit.too-few-runs [2]");
    assertThat(refused(spin("a", 1), spin("b", 2))).isEmpty();
  }

  @Test
  void withoutASpinNothingMoves() {
    assertThat(refused(STILL, still("end", 2))).containsExactly("fit.no-moved-run []");
    assertThat(DataCheck.moves(STILL)).isFalse();
    assertThat(DataCheck.moves(spin("a", 0))).isTrue();
  }

  @Test
  void recordingsOfSeveralUnitsAreRefused() {
    Run volts =
        MadeRuns.run(
            "volts", RunKind.STILL, Recording.of(SignalUnit.SIGNAL_V, series(3)), Optional.empty());
    assertThat(refused(STILL, spin("a", 1), volts)).containsExactly("fit.mixed-units [2]");
  }

  @Test
  void theSameRecordingUnderTwoNamesIsRefused() {
    assertThat(refused(STILL, spin("a", 1), still("copy", 0)))
        .containsExactly("fit.same-recording still[copy]", "fit.same-recording copy[still]");
  }

  @Test
  void aSignalThatHardlyMovesMayRepeat() {
    Run one = MadeRuns.still("one", MadeRuns.series(0, 10, 600, t -> t < 300 ? 1 : 2));
    Run two = MadeRuns.still("two", MadeRuns.series(0, 10, 600, t -> t < 300 ? 1 : 2));
    assertThat(refused(one, two, spin("a", 1))).isEmpty();
  }

  /** 70 °F are 21 °C. */
  @Test
  void aRoomInDegreesFahrenheitIsNamed() {
    Run spin = spin("a", 1);
    assertThat(refused(STILL, MadeRuns.in(spin, 273.15 + 70), still("end", 2)))
        .containsExactly("fit.air-in-fahrenheit a[70.0, 21.1]");
    assertThat(refused(STILL, MadeRuns.in(spin, 273.15 + 45), still("end", 2))).isEmpty();
    assertThat(refused(STILL, MadeRuns.in(spin, 273.15 + 116), still("end", 2))).isEmpty();
  }

  @Test
  void aRecordingOfElevenRowsIsTooShortButForAZero() {
    Series eleven = MadeRuns.series(0, 10, 100, t -> 20 + t);
    Series twelve = MadeRuns.series(0, 10, 110, t -> 20 + t);
    assertThat(refused(STILL, spin("a", 1), MadeRuns.still("brief", eleven)))
        .containsExactly("fit.too-short brief[11]");
    assertThat(refused(STILL, spin("a", 1), MadeRuns.still("brief", twelve))).isEmpty();
    assertThat(refused(STILL, spin("a", 1), spin("b", 2), MadeRuns.zero("zero", eleven))).isEmpty();
  }

  @Test
  void aSpinOfLessThanAMinuteIsTooShort() {
    Run brief = MadeRuns.spin("a", series(1), MadeRuns.arm(200, 259, 12, 58));
    assertThat(refused(STILL, brief, still("end", 2))).containsExactly("fit.spin-too-short a[59]");
    Run minute = MadeRuns.spin("a", series(1), MadeRuns.arm(200, 260, 12, 58));
    assertThat(refused(STILL, minute, still("end", 2))).isEmpty();
  }
}
