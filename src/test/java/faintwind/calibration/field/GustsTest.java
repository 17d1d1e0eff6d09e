package faintwind.calibration.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.field.FieldSummary.Gust;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An hour of rows a second, 1 m/s with something in it. */
class GustsTest {
  private static SpeedRow row(double speed_m_s, double u95_m_s, Set<SpeedFlag> flags) {
    return new SpeedRow(OptionalDouble.of(speed_m_s), OptionalDouble.of(u95_m_s), flags);
  }

  private static SpeedSeries hour(DoubleUnaryOperator speed_m_s, double u95_m_s) {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    for (int t = 0; t < 3600; t++) {
      rows.add(t, row(speed_m_s.applyAsDouble(t), u95_m_s, EnumSet.noneOf(SpeedFlag.class)));
    }
    return rows.build();
  }

  /**
   * 20 s of v in ten minutes (601 rows) of 1 m/s make a mean of 1 + 20·(v − 1)/601: a gust is one
   * and a half times it, so v above 1.526.
   */
  @ParameterizedTest(name = "{0} ± {1} m/s for 20 s: {2}")
  @CsvSource({"1.54, 0.1, true", "1.51, 0.1, false", "2, 0.9, true", "2, 1, false", "5, 0.1, true"})
  void aGustStandsOutOfTenMinutesAndOfItsOwnUncertainty(double v, double u95, boolean is) {
    List<Gust> gusts = Gusts.of(hour(t -> t >= 1800 && t < 1820 ? v : 1, u95));
    assertThat(gusts).hasSize(is ? 1 : 0);
    if (is) {
      Gust gust = gusts.get(0);
      assertThat(gust.from_s()).isEqualTo(1800);
      assertThat(gust.to_s()).isEqualTo(1820);
      assertThat(gust.peak_m_s()).isEqualTo(v);
      assertThat(gust.u95_m_s()).isEqualTo(u95);
    }
  }

  @Test
  void theStrongestComesFirst() {
    List<Gust> gusts =
        Gusts.of(
            hour(
                t -> {
                  if (t >= 600 && t < 610) {
                    return 2;
                  }
                  return t >= 3000 && t < 3010 ? 3 - 0.01 * Math.abs(t - 3004) : 1;
                },
                0.1));
    assertThat(gusts).extracting(Gust::peak_m_s).containsExactly(3.0, 2.0);
    assertThat(gusts.get(0).peak_s()).isEqualTo(3004);
  }

  @Test
  void aGustAtTheEndEndsWithTheRecord() {
    List<Gust> gusts = Gusts.of(hour(t -> t >= 3590 ? 4 : 1, 0.1));
    assertThat(gusts).hasSize(1);
    assertThat(gusts.get(0).to_s()).isEqualTo(3599);
  }

  /** Rows of 1 s, then a break: the row before it stands for a second, ten steps are no break. */
  @Test
  void aRowStandsForTheTimeToTheNextButNotForABreak() {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    for (double t : new double[] {0, 1, 2, 3, 13, 14, 15, 26, 27, 28}) {
      rows.add(t, row(t == 2 ? 0.01 : 1, 0.1, EnumSet.noneOf(SpeedFlag.class)));
    }
    rows.add(28, row(9, 0.1, EnumSet.noneOf(SpeedFlag.class)));
    SpeedSeries series = rows.build();
    assertThat(series.size()).as("time that does not rise is passed over").isEqualTo(10);
    assertThat(series.lasts_s(0)).isEqualTo(1);
    assertThat(series.lasts_s(3)).as("ten steps").isEqualTo(10);
    assertThat(series.lasts_s(6)).as("eleven are a break").isEqualTo(1);
    assertThat(series.lasts_s(9)).isEqualTo(1);
    assertThat(series.used_s()).isCloseTo(19, within(1e-12));
    assertThat(series.from(13)).isEqualTo(4);
    assertThat(series.from(13.5)).isEqualTo(5);
    assertThat(series.from(99)).isEqualTo(10);
  }

  @ParameterizedTest(name = "{0}: used {1}, faint {2}, beyond {3}")
  @CsvSource({
    "FLOOR, true, true, false",
    "ABOVE, true, false, true",
    "WARMUP, false, false, false",
    "POWER, false, false, false",
    "BAD, false, false, false",
    "GAP, true, false, false"
  })
  void flagsSayWhatARowIsGoodFor(SpeedFlag flag, boolean used, boolean faint, boolean beyond) {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    rows.add(0, row(1, 0.1, EnumSet.of(flag)));
    SpeedSeries series = rows.build();
    assertThat(series.isUsed(0)).isEqualTo(used);
    assertThat(series.isFaint(0)).isEqualTo(faint);
    assertThat(series.isBeyond(0)).isEqualTo(beyond);
    assertThat(series.used_s()).isEqualTo(used ? 1 : 0);
  }
}
