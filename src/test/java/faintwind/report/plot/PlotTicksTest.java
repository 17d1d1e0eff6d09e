package faintwind.report.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlotTicksTest {

  @Test
  void ticksAreRoundNumbers() {
    assertThat(labels(PlotAxis.Scale.LINEAR, 0, 2.6, 7))
        .containsExactly("0.0", "0.5", "1.0", "1.5", "2.0", "2.5");
  }

  @Test
  void errorsCarryTheirSign() {
    assertThat(labels(PlotAxis.Scale.SIGNED, -30, 60, 5))
        .containsExactly("\u221225", "0", "+25", "+50");
  }

  @Test
  void aDayEndsAtTwentyFour() {
    assertThat(labels(PlotAxis.Scale.CLOCK, 0, 86_400, 9))
        .startsWith("00:00", "03:00")
        .endsWith("21:00", "24:00");
  }

  @Test
  void decimalMarkFollowsTheLocale() {
    PlotRange range = new PlotRange(0, 1);
    assertThat(PlotTicks.of(PlotAxis.Scale.LINEAR, range, 3, Locale.GERMANY).get(1).label())
        .isEqualTo("0,5");
  }

  @Test
  void thousandsAreParted() {
    assertThat(PlotTicks.number(1_234_567.5, 1, false, Locale.ENGLISH))
        .isEqualTo("1\u2009234\u2009567.5");
  }

  @ParameterizedTest
  @EnumSource(
      value = PlotAxis.Scale.class,
      names = {"LINEAR", "SIGNED", "MINUTES"})
  void noMoreTicksThanAskedAndAllInside(PlotAxis.Scale scale) {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double low = random.nextGaussian() * 100;
      double span = Math.pow(10, random.nextDouble() * 6 - 3);
      PlotRange range = new PlotRange(low, low + span);
      int most = 2 + random.nextInt(8);
      List<PlotTicks.Tick> ticks = PlotTicks.of(scale, range, most, Locale.ENGLISH);
      assertThat(ticks.size()).isLessThanOrEqualTo(most);
      assertThat(ticks)
          .allMatch(t -> t.value() >= low - 1e-6 * span && t.value() <= low + span * (1 + 1e-6));
    }
  }

  private static List<String> labels(PlotAxis.Scale scale, double low, double high, int most) {
    return PlotTicks.of(scale, new PlotRange(low, high), most, Locale.ENGLISH).stream()
        .map(PlotTicks.Tick::label)
        .toList();
  }
}
