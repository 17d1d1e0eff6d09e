package faintwind.report.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotPoints;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SpikesTest {
  private static List<PlotPoints> line(IntToDoubleFunction value) {
    double[] x = IntStream.range(0, 400).mapToDouble(i -> i).toArray();
    double[] y = Arrays.stream(x).map(i -> value.applyAsDouble((int) i)).toArray();
    return List.of(PlotPoints.of(x, y));
  }

  private static double fall(int i) {
    return 13 + 15 * Math.exp(-i / 60.0);
  }

  @Test
  void rowsFarFromAllAboutThemLeaveTheAxis() {
    Spikes spikes = Spikes.of(line(i -> i == 100 || i == 300 || i == 301 ? 49 : fall(i)));
    assertThat(spikes.count()).isEqualTo(3);
    PlotAxis axis = spikes.without(PlotAxis.linear("K"));
    assertThat(axis.high().orElseThrow()).isCloseTo(28.7, within(0.2));
    assertThat(axis.low().orElseThrow()).isCloseTo(12.3, within(0.2));
  }

  @Test
  void steepFallAndNoiseAreNoSpikes() {
    Spikes steep = Spikes.of(line(i -> i < 200 ? 28 : 13 + 15 * Math.exp(-(i - 200) / 3.0)));
    Spikes noise = Spikes.of(line(i -> 20 + 3 * Math.sin(2.1 * i * i)));
    assertThat(steep.any()).isFalse();
    assertThat(steep.without(PlotAxis.linear("K")).high()).isEmpty();
    assertThat(noise.without(PlotAxis.linear("K"))).isEqualTo(PlotAxis.linear("K"));
  }

  @Test
  void flatLineHasNone() {
    assertThat(Spikes.of(line(i -> 20)).any()).isFalse();
  }
}
