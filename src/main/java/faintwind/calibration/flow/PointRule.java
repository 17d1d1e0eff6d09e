package faintwind.calibration.flow;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Where to measure, so that the plain mean of the speeds is the mean over the section. Distances
 * are from one wall, as a share of diameter or side.
 */
public enum PointRule {
  /**
   * Log-Tchebycheff, ISO 3966: circle with 3 and 4 points a radius as printed in ISO 5802:2001,
   * tables 2 and 3; with 5 points from memory; rectangle with 5, 6 and 7 lines as printed in ISO
   * 3966 and ISO 5802.
   */
  LOG_TCHEBYCHEFF(3, 5, 5, 7),
  /** The middles of parts of equal area. */
  EQUAL_AREAS(2, 10, 3, 12);

  private static final double[][] CIRCLE = {
    {0.032, 0.137, 0.312}, {0.024, 0.100, 0.194, 0.334}, {0.019, 0.076, 0.155, 0.215, 0.357}
  };
  private static final double[][] SIDE = {
    {0.074, 0.288, 0.500, 0.712, 0.926},
    {0.061, 0.235, 0.437, 0.563, 0.765, 0.939},
    {0.053, 0.203, 0.366, 0.500, 0.634, 0.797, 0.947}
  };

  private final int fewestOnRadius;
  private final int mostOnRadius;
  private final int fewestLines;
  private final int mostLines;

  PointRule(int fewestOnRadius, int mostOnRadius, int fewestLines, int mostLines) {
    this.fewestOnRadius = fewestOnRadius;
    this.mostOnRadius = mostOnRadius;
    this.fewestLines = fewestLines;
    this.mostLines = mostLines;
  }

  /** Fewest points on a radius, or lines across a side. */
  public int fewest(Opening.Shape shape) {
    return shape == Opening.Shape.ROUND ? fewestOnRadius : fewestLines;
  }

  /** Most of them. */
  public int most(Opening.Shape shape) {
    return shape == Opening.Shape.ROUND ? mostOnRadius : mostLines;
  }

  /** Along a whole diameter, rising, with so many points on a radius. */
  double[] acrossDiameter(int onRadius) {
    double[] half =
        this == LOG_TCHEBYCHEFF
            ? CIRCLE[onRadius - fewestOnRadius]
            : IntStream.rangeClosed(1, onRadius)
                .mapToDouble(i -> (1 - Math.sqrt((2.0 * (onRadius - i) + 1) / (2 * onRadius))) / 2)
                .toArray();
    return IntStream.range(0, 2 * onRadius)
        .mapToDouble(i -> i < onRadius ? half[i] : 1 - half[2 * onRadius - 1 - i])
        .toArray();
  }

  /** Across a side, rising, on so many lines. */
  double[] acrossSide(int lines) {
    return this == LOG_TCHEBYCHEFF
        ? Arrays.copyOf(SIDE[lines - fewestLines], lines)
        : IntStream.range(0, lines).mapToDouble(i -> (i + 0.5) / lines).toArray();
  }
}
