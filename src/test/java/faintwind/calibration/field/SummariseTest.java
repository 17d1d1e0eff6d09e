package faintwind.calibration.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.field.FieldSummary.AboveLimit;
import faintwind.calibration.field.FieldSummary.Gust;
import faintwind.calibration.field.FieldSummary.Percentile;
import faintwind.calibration.field.FieldSummary.Wanted;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SummariseTest {
  private static final StretchMean.How HOW =
      new StretchMean.How(60, SharedPart.unknown(), StretchMean.Of.THIS_TIME);
  private static final StretchMean.How PLACE =
      new StretchMean.How(60, SharedPart.unknown(), StretchMean.Of.THE_PLACE);

  private static SpeedRow row(double speed, double u95, SpeedFlag... flags) {
    EnumSet<SpeedFlag> all = EnumSet.noneOf(SpeedFlag.class);
    all.addAll(List.of(flags));
    return new SpeedRow(OptionalDouble.of(speed), OptionalDouble.of(u95), all);
  }

  private static SpeedSeries series(int seconds, DoubleUnaryOperator speed) {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    for (int t = 0; t < seconds; t++) {
      double v = speed.applyAsDouble(t);
      rows.add(t, v < 0.02 ? row(v, 0.02, SpeedFlag.FLOOR) : row(v, 0.05 * v));
    }
    return rows.build();
  }

  private static FieldSummary summary(SpeedSeries rows, Double... limits) {
    Wanted wanted = new Wanted(List.of(limits), Wanted.CALM_M_S, 0, HOW);
    return Summarise.of(rows, wanted).orElseThrow();
  }

  /** A ramp from 0 to 1 m/s: mean one half, each percentile its own share (own arithmetic). */
  @Test
  void rampHasItsMeanAndPercentiles() {
    FieldSummary found = summary(series(10_000, t -> t / 10_000), 0.3);
    assertThat(found.mean().speed_m_s()).isCloseTo(0.5, within(1e-3));
    for (Percentile p : found.percentiles()) {
      assertThat(p.speed_m_s()).isCloseTo(p.percent() / 100, within(2e-4));
    }
    AboveLimit above = found.limits().get(0);
    assertThat(above.above()).isCloseTo(0.7, within(1e-3));
    assertThat(above.below()).isCloseTo(0.3, within(1e-3));
    // all speeds 5 % too high or too low together
    assertThat(above.least()).isCloseTo(1 - 0.3 / 0.95, within(1e-3));
    assertThat(above.most()).isCloseTo(1 - 0.3 / 1.05, within(1e-3));
    assertThat(found.calm().below()).isCloseTo(0.05, within(1e-3));
    assertThat(found.cover().faintShare()).isCloseTo(0.02, within(1e-3));
    assertThat(found.run_m()).isCloseTo(5000, within(10.0));
    assertThat(found.u95Run_m() / found.run_m()).isGreaterThan(0.049);
  }

  /** The calibration's error is the same in every row: a longer log does not make it smaller. */
  @Test
  void sharedPartStaysInTheMean() {
    Random random = new Random(5);
    double shortLog =
        summary(series(3600, t -> 0.2 + 0.01 * random.nextGaussian())).mean().u95_m_s();
    double longLog =
        summary(series(100_000, t -> 0.2 + 0.01 * random.nextGaussian())).mean().u95_m_s();
    assertThat(shortLog).isCloseTo(0.01, within(1e-4));
    assertThat(longLog).isCloseTo(0.01, within(1e-4));
  }

  /** Scatter of the blocks' means: 60 means of 60 rows of 0.05 m/s each. */
  @Test
  void ownPartFollowsTheScatter() {
    Random random = new Random(6);
    SpeedSeries rows = series(3600, t -> 0.3 + 0.05 * random.nextGaussian());
    assertThat(summary(rows).mean().own_m_s()).isZero();
    StretchMean mean = StretchMean.of(rows, PLACE).orElseThrow();
    double expected = 2.0 * 0.05 / Math.sqrt(3600);
    assertThat(mean.own_m_s()).isBetween(0.7 * expected, 1.4 * expected);
  }

  @Test
  void hoursAreThoseOfTheClock() {
    Wanted wanted = new Wanted(List.of(), 0.05, -1800, HOW);
    SpeedSeries rows = series(7200, t -> t < 1800 ? 0.1 : 0.3);
    List<FieldSummary.Hour> hours = Summarise.of(rows, wanted).orElseThrow().hours();
    assertThat(hours)
        .extracting(FieldSummary.Hour::from_s)
        .containsExactly(-1800.0, 1800.0, 5400.0);
    assertThat(hours.get(0).mean().orElseThrow().speed_m_s()).isCloseTo(0.1, within(1e-9));
    assertThat(hours.get(0).mean().orElseThrow().used_s()).isCloseTo(1800, within(1e-9));
    assertThat(hours.get(1).highest_m_s()).isEqualTo(0.3);
  }

  @Test
  void gustStandsOutOfTenMinutes() {
    SpeedSeries rows =
        series(3600, t -> t >= 1000 && t < 1030 ? 0.5 - Math.abs(t - 1015) / 100 : 0.1);
    List<Gust> gusts = summary(rows).gusts();
    assertThat(gusts).hasSize(1);
    assertThat(gusts.get(0).peak_m_s()).isCloseTo(0.5, within(1e-9));
    assertThat(gusts.get(0).peak_s()).isEqualTo(1015);
    assertThat(gusts.get(0).from_s()).isEqualTo(1000);
    assertThat(gusts.get(0).to_s()).isEqualTo(1030);
    // a bump inside the uncertainty of its row is none
    SpeedSeries.Builder wide = new SpeedSeries.Builder();
    for (int t = 0; t < 3600; t++) {
      wide.add(t, row(t == 1000 ? 0.16 : 0.1, 0.1));
    }
    assertThat(summary(wide.build()).gusts()).isEmpty();
  }

  @Test
  void breaksAndRowsThatMeanNothingCountForNothing() {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    for (int t = 0; t < 100; t++) {
      rows.add(t, row(0.2, 0.01));
    }
    for (int t = 100; t < 150; t++) {
      rows.add(t, row(5, 0.01, SpeedFlag.WARMUP));
    }
    rows.add(150, SpeedRow.BAD);
    rows.add(149, row(9, 0.01));
    rows.add(90_000, row(0.2, 0.01, SpeedFlag.GAP));
    FieldSummary found = summary(rows.build());
    assertThat(found.mean().speed_m_s()).isCloseTo(0.2, within(1e-12));
    assertThat(found.cover().used_s()).isCloseTo(101, within(1e-9));
    assertThat(found.cover().leftOut_s()).isCloseTo(51, within(1e-9));
    assertThat(found.hours()).hasSize(2);
  }

  @Test
  void nothingUsedIsNoSummary() {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    rows.add(0, SpeedRow.BAD);
    Wanted wanted = new Wanted(List.of(), 0.05, 0, HOW);
    assertThat(Summarise.of(rows.build(), wanted)).isEmpty();
    assertThat(Summarise.of(new SpeedSeries.Builder().build(), wanted)).isEmpty();
  }
}
