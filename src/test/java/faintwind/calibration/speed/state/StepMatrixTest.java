package faintwind.calibration.speed.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against plain products of whole matrices. */
class StepMatrixTest {
  private final Random random = new Random(5);

  @Test
  void takesACovarianceForwardsAndInformationBackwards() {
    for (int i = 0; i < 20; i++) {
      double[] step = numbers(StepMatrix.KEPT);
      double[] p = numbers(StepMatrix.KEPT);
      RealMatrix phi = whole(step);
      RealMatrix forwards = phi.multiply(symmetric(p)).multiply(phi.transpose());
      double[] big = p.clone();
      double[] small = numbers(4);
      RealMatrix backwards = phi.transpose().multiply(symmetric(p)).multiply(phi);
      double[] smallBack = phi.transpose().operate(small);
      StepMatrix.forwards(step, p);
      assertSame(symmetric(p), forwards);
      double[] later = new double[3 + StepMatrix.KEPT];
      System.arraycopy(step, 0, later, 3, StepMatrix.KEPT);
      StepMatrix.backwards(later, 3, big, small);
      assertSame(symmetric(big), backwards);
      assertThat(small).containsExactly(smallBack, within(1e-12));
    }
  }

  @Test
  void followsOneStepByAnother() {
    double[] first = numbers(StepMatrix.KEPT);
    double[] later = numbers(StepMatrix.KEPT);
    RealMatrix both = whole(later).multiply(whole(first));
    StepMatrix.follow(first, later);
    assertSame(whole(first), both);
    double[] none = new double[StepMatrix.KEPT];
    StepMatrix.identity(none);
    StepMatrix.follow(none, later);
    assertThat(none).containsExactly(later, within(0.0));
  }

  private double[] numbers(int count) {
    return random.doubles(count, -1, 1).toArray();
  }

  private static RealMatrix whole(double[] x) {
    return new Array2DRowRealMatrix(
        new double[][] {
          {x[0], x[1], 0, x[2]}, {x[3], x[4], 0, x[5]}, {x[6], x[7], x[8], x[9]}, {0, 0, 0, 1}
        });
  }

  private static RealMatrix symmetric(double[] y) {
    return new Array2DRowRealMatrix(
        new double[][] {
          {y[0], y[1], y[2], y[3]},
          {y[1], y[4], y[5], y[6]},
          {y[2], y[5], y[7], y[8]},
          {y[3], y[6], y[8], y[9]}
        });
  }

  private static void assertSame(RealMatrix found, RealMatrix expected) {
    assertThat(found.subtract(expected).getNorm()).isLessThan(1e-12);
  }
}
