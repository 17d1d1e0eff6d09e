package faintwind.calibration.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PointRuleTest {
  /** ISO 5802:2001, table 2. */
  @Test
  void circleWithThreePointsARadius() {
    assertThat(PointRule.LOG_TCHEBYCHEFF.acrossDiameter(3))
        .containsExactly(new double[] {0.032, 0.137, 0.312, 0.688, 0.863, 0.968}, within(1e-12));
  }

  /** ISO 5802:2001, table 3. */
  @Test
  void circleWithFourPointsARadius() {
    assertThat(PointRule.LOG_TCHEBYCHEFF.acrossDiameter(4))
        .containsExactly(
            new double[] {0.024, 0.100, 0.194, 0.334, 0.666, 0.806, 0.900, 0.976}, within(1e-12));
  }

  /**
   * ISO 3966 gives offsets from the middle; here they are as remembered: 0, ±0.212, ±0.426 of the
   * side for five lines, ±0.063, ±0.265, ±0.439 for six, 0, ±0.134, ±0.297, ±0.447 for seven.
   */
  @Test
  void linesOfARectangle() {
    double[][] offsets = {
      {-0.426, -0.212, 0, 0.212, 0.426},
      {-0.439, -0.265, -0.063, 0.063, 0.265, 0.439},
      {-0.447, -0.297, -0.134, 0, 0.134, 0.297, 0.447}
    };
    for (double[] offset : offsets) {
      double[] shares = PointRule.LOG_TCHEBYCHEFF.acrossSide(offset.length);
      for (int i = 0; i < offset.length; i++) {
        assertThat(shares[i]).isCloseTo(0.5 + offset[i], within(1e-9));
      }
    }
  }

  /** Geometry: ring i of n equal ones has its middle at R √((2i − 1)/(2n)). */
  @Test
  void equalAreasHalveTheirRings() {
    for (int n = 2; n <= 10; n++) {
      double[] shares = PointRule.EQUAL_AREAS.acrossDiameter(n);
      assertThat(shares).hasSize(2 * n).isSorted();
      for (int ring = 1; ring <= n; ring++) {
        double r = Math.abs(1 - 2 * shares[n - ring]);
        assertThat(r * r).isCloseTo((2.0 * ring - 1) / (2 * n), within(1e-12));
        assertThat(shares[n - ring] + shares[n + ring - 1]).isCloseTo(1, within(1e-12));
      }
    }
    assertThat(PointRule.EQUAL_AREAS.acrossSide(4))
        .containsExactly(new double[] {0.125, 0.375, 0.625, 0.875}, within(1e-12));
  }

  /**
   * For u = (y/R)^(1/7) the mean over a circle is 49/60 of the middle's speed (own integration,
   * cross-checked below by a fine sum); a log-Tchebycheff rule is within 1 % of it.
   */
  @Test
  void pipeFlowIsMetWithinOnePercent() {
    assertThat(WallLaw.circleMean(7)).isCloseTo(49.0 / 60, within(1e-12));
    assertThat(fineSum()).isCloseTo(49.0 / 60, within(1e-4));
    for (int onRadius = 3; onRadius <= 5; onRadius++) {
      double[] shares = PointRule.LOG_TCHEBYCHEFF.acrossDiameter(onRadius);
      assertThat(WallLaw.error(Opening.Shape.ROUND, shares, 7)).isBetween(-0.01, 0.01);
    }
    for (int lines = 5; lines <= 7; lines++) {
      double[] shares = PointRule.LOG_TCHEBYCHEFF.acrossSide(lines);
      assertThat(WallLaw.error(Opening.Shape.RECTANGLE, shares, 7)).isBetween(-0.01, 0.01);
    }
  }

  private static double fineSum() {
    int steps = 200_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double r = (i + 0.5) / steps;
      sum += 2 * r * Math.pow(1 - r, 1.0 / 7) / steps;
    }
    return sum;
  }

  /** Few rings of equal area read high, since none lies near the wall; more rings less so. */
  @Test
  void equalAreasReadHighNearTheWall() {
    double few = WallLaw.error(Opening.Shape.ROUND, PointRule.EQUAL_AREAS.acrossDiameter(2), 7);
    double many = WallLaw.error(Opening.Shape.ROUND, PointRule.EQUAL_AREAS.acrossDiameter(10), 7);
    assertThat(few).isPositive();
    assertThat(many).isPositive().isLessThan(few / 3);
  }

  /**
   * The second way through the speeds agrees with the exact mean for the profile it is made for.
   */
  @Test
  void weightsIntegrateTheWallLaw() {
    double[] shares = PointRule.LOG_TCHEBYCHEFF.acrossDiameter(5);
    assertThat(sum(WallLaw.circleWeights(shares), shares))
        .isCloseTo(49.0 / 60, within(0.01 * 49 / 60));
    double[] side = PointRule.LOG_TCHEBYCHEFF.acrossSide(7);
    assertThat(sum(WallLaw.sideWeights(side), side)).isCloseTo(7.0 / 8, within(0.01 * 7 / 8));
  }

  private static double sum(double[] weights, double[] shares) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * Math.pow(2 * Math.min(shares[i], 1 - shares[i]), 1.0 / 7);
    }
    return sum;
  }
}
