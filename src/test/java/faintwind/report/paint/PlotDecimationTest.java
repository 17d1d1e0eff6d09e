package faintwind.report.paint;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.report.plot.PlotPoints;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlotDecimationTest {
  private static final PlotPlace X = new PlotPlace(0, 1000, 0, 300, false);

  @Test
  void everyExtremeOfAPixelColumnIsKept() {
    Random random = new Random(41);
    int n = 50_000;
    double[] x = IntStream.range(0, n).mapToDouble(i -> 1000.0 * i / n).toArray();
    double[] y = IntStream.range(0, n).mapToDouble(i -> random.nextGaussian()).toArray();
    y[31_234] = 40;
    y[12_345] = -40;
    PlotPoints all = PlotPoints.of(x, y);
    PlotPoints few = PlotDecimation.toColumns(all, X);
    assertThat(few.size()).isLessThanOrEqualTo(4 * 301);
    for (int column = 0; column <= 300; column++) {
      assertThat(highest(few, column)).isEqualTo(highest(all, column));
      assertThat(lowest(few, column)).isEqualTo(lowest(all, column));
    }
  }

  @Test
  void bandEdgesAreKeptToo() {
    int n = 20_000;
    double[] x = IntStream.range(0, n).mapToDouble(i -> 1000.0 * i / n).toArray();
    double[] y = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    low[777] = -3;
    high[15_001] = 5;
    PlotPoints few = PlotDecimation.toColumns(PlotPoints.withBand(x, y, low, high), X);
    assertThat(IntStream.range(0, few.size()).mapToDouble(few::low).min()).hasValue(-3);
    assertThat(IntStream.range(0, few.size()).mapToDouble(few::high).max()).hasValue(5);
  }

  @Test
  void firstAndLastPointStay() {
    int n = 30_000;
    double[] x = IntStream.range(0, n).mapToDouble(i -> 1000.0 * i / (n - 1)).toArray();
    PlotPoints few = PlotDecimation.toColumns(PlotPoints.of(x, x), X);
    assertThat(few.x(0)).isEqualTo(0);
    assertThat(few.x(few.size() - 1)).isEqualTo(1000);
  }

  @Test
  void fewPointsAreLeftAlone() {
    PlotPoints points = PlotPoints.of(new double[] {0, 500, 1000}, new double[] {1, 2, 3});
    assertThat(PlotDecimation.toColumns(points, X)).isSameAs(points);
  }

  private static double highest(PlotPoints points, int column) {
    return IntStream.range(0, points.size())
        .filter(i -> Math.round(X.of(points.x(i))) == column)
        .mapToDouble(points::y)
        .max()
        .orElseThrow();
  }

  private static double lowest(PlotPoints points, int column) {
    return IntStream.range(0, points.size())
        .filter(i -> Math.round(X.of(points.x(i))) == column)
        .mapToDouble(points::y)
        .min()
        .orElseThrow();
  }
}
