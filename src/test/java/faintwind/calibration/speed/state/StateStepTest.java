package faintwind.calibration.speed.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.response.ThermocoupleCurve;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against plain products and series of whole matrices. */
class StateStepTest {
  private static final double STEP_S = 0.8;
  private static final double SHARE = 0.06;
  private static final double HEATER_S = 5;
  private static final double BEAD_S = 2.4;
  private static final double HEATING_K_S = 0.07;
  private static final double STILL_1_S = 3e-3;
  private static final double SLOPE = 2e-5;

  private final Random random = new Random(5);
  private final StateStep step =
      new StateStep(
          new ThermalPath(
              HEATING_K_S, SHARE, HEATER_S, BEAD_S, 0, 0, new ThermocoupleCurve(40, 293, 0, 0)));

  @Test
  void stepIsTheSeriesOfItsLinearSystem() {
    HeatMean from = from();
    step.lasts(STEP_S);
    step.take(from, HEATING_K_S, STILL_1_S, SLOPE);
    double ball = 1 - SHARE;
    double loss = STILL_1_S * from.ratio;
    double rate0 = (from.flow_K_s - loss * from.delta_K) / ball;
    double[] first = {
      -(loss + from.delta_K * SLOPE * from.ratio) / ball,
      1 / ball,
      0,
      -STILL_1_S * from.delta_K / ball
    };
    double back = SHARE / HEATER_S;
    double[][] a = {
      first,
      {-back * first[0], -1 / HEATER_S - back * first[1], 0, -back * first[3]},
      {1 / BEAD_S, 0, -1 / BEAD_S, 0},
      {0, 0, 0, 0}
    };
    RealMatrix system = new Array2DRowRealMatrix(a).scalarMultiply(STEP_S);
    RealMatrix share = MatrixUtils.createRealIdentityMatrix(4);
    RealMatrix term = share;
    for (int k = 1; k < StateStep.TERMS; k++) {
      term = term.multiply(system).scalarMultiply(1.0 / (k + 1));
      share = share.add(term);
    }
    double[] rates = {
      STEP_S * rate0,
      STEP_S * ((HEATING_K_S - from.flow_K_s) / HEATER_S - back * rate0),
      STEP_S * (from.delta_K - from.bead_K) / BEAD_S,
      0
    };
    double[] moved = share.operate(rates);
    assertThat(new double[] {step.moveDelta_K, step.moveFlow_K_s, step.moveBead_K, 0})
        .containsExactly(moved, within(1e-14));
    double[] found = new double[StateStep.KEPT];
    step.store(found, 0);
    RealMatrix phi = MatrixUtils.createRealIdentityMatrix(4).add(share.multiply(system));
    assertSame(whole(found), phi, 1e-14);
  }

  @Test
  void takesACovarianceForwards() {
    StateCovariance p = new StateCovariance();
    p.begin(0.3, 0.02, 0.4, 2);
    step.lasts(STEP_S);
    RealMatrix expected = symmetric(stored(p));
    for (int i = 0; i < 20; i++) {
      step.take(from(), HEATING_K_S, STILL_1_S, SLOPE);
      double[] numbers = new double[StateStep.KEPT];
      step.store(numbers, 0);
      RealMatrix phi = whole(numbers);
      expected = phi.multiply(expected).multiply(phi.transpose());
      p.forwards(step);
      assertSame(symmetric(stored(p)), expected, 1e-12);
    }
  }

  @Test
  void correctsACovariance() {
    StateCovariance p = new StateCovariance();
    p.begin(0.3, 0.02, 0.4, 2);
    step.lasts(STEP_S);
    step.take(from(), HEATING_K_S, STILL_1_S, SLOPE);
    p.forwards(step);
    double variance = 0.7;
    RealMatrix gain = new Array2DRowRealMatrix(random.doubles(4, -1, 1).toArray());
    RealMatrix expected =
        symmetric(stored(p)).subtract(gain.multiply(gain.transpose()).scalarMultiply(variance));
    double[] g = gain.getColumn(0);
    p.correct(g[0], g[1], g[2], g[3], variance);
    assertSame(symmetric(stored(p)), expected, 1e-14);
  }

  @Test
  void takesInformationBackwardsOverAStep() {
    double[] numbers = random.doubles(3 + StateStep.KEPT, -1, 1).toArray();
    double[] x = new double[StateStep.KEPT];
    System.arraycopy(numbers, 3, x, 0, StateStep.KEPT);
    double[] big = random.doubles(StateCovariance.KEPT, -1, 1).toArray();
    double[] small = random.doubles(4, -1, 1).toArray();
    BackwardSums sums = sums(big, small);
    sums.overStep(numbers, 3);
    RealMatrix phi = whole(x);
    assertSame(
        symmetric(stored(sums)), phi.transpose().multiply(symmetric(big)).multiply(phi), 1e-12);
    assertThat(new double[] {sums.l0, sums.l1, sums.l2, sums.l3})
        .containsExactly(phi.transpose().operate(small), within(1e-12));
  }

  @Test
  void takesInformationBackwardsOverAReading() {
    double[] gain = random.doubles(4, -1, 1).toArray();
    double[] big = random.doubles(StateCovariance.KEPT, -1, 1).toArray();
    double[] small = random.doubles(4, -1, 1).toArray();
    double h = 41;
    double variance = 2.2;
    double miss = 0.9;
    BackwardSums sums = sums(big, small);
    sums.overReading(gain, 0, h, miss / variance, 1 / variance);
    RealMatrix reading = new Array2DRowRealMatrix(new double[][] {{0, 0, h, 0}});
    RealMatrix kept =
        MatrixUtils.createRealIdentityMatrix(4)
            .subtract(new Array2DRowRealMatrix(gain).multiply(reading));
    RealMatrix expected =
        kept.transpose()
            .multiply(symmetric(big))
            .multiply(kept)
            .add(reading.transpose().multiply(reading).scalarMultiply(1 / variance));
    assertSame(symmetric(stored(sums)), expected, 1e-9);
    double[] back = kept.transpose().operate(small);
    back[2] -= h * miss / variance;
    assertThat(new double[] {sums.l0, sums.l1, sums.l2, sums.l3})
        .containsExactly(back, within(1e-11));
  }

  @Test
  void followsOneStepByAnother() {
    double[] first = random.doubles(StateStep.KEPT, -1, 1).toArray();
    double[] later = new double[StateStep.KEPT];
    step.lasts(STEP_S);
    step.take(from(), HEATING_K_S, STILL_1_S, SLOPE);
    step.store(later, 0);
    RealMatrix both = whole(later).multiply(whole(first));
    step.follow(first, 0);
    assertSame(whole(first), both, 1e-14);
    double[] none = new double[StateStep.KEPT];
    StateStep.storeNone(none, 0);
    step.follow(none, 0);
    assertThat(none).containsExactly(later, within(0.0));
  }

  private HeatMean from() {
    HeatMean from = new HeatMean();
    from.delta_K = 8 + random.nextDouble();
    from.flow_K_s = 0.06 + 0.01 * random.nextDouble();
    from.bead_K = from.delta_K + 0.3 * random.nextDouble();
    from.ratio = 1 + random.nextDouble();
    return from;
  }

  private static double[] stored(StateCovariance p) {
    double[] numbers = new double[StateCovariance.KEPT];
    p.store(numbers, 0);
    return numbers;
  }

  private static double[] stored(BackwardSums s) {
    return new double[] {s.b0, s.b1, s.b2, s.b3, s.b4, s.b5, s.b6, s.b7, s.b8, s.b9};
  }

  private static BackwardSums sums(double[] big, double[] small) {
    BackwardSums sums = new BackwardSums();
    sums.b0 = big[0];
    sums.b1 = big[1];
    sums.b2 = big[2];
    sums.b3 = big[3];
    sums.b4 = big[4];
    sums.b5 = big[5];
    sums.b6 = big[6];
    sums.b7 = big[7];
    sums.b8 = big[8];
    sums.b9 = big[9];
    sums.l0 = small[0];
    sums.l1 = small[1];
    sums.l2 = small[2];
    sums.l3 = small[3];
    return sums;
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

  private static void assertSame(RealMatrix found, RealMatrix expected, double within) {
    assertThat(found.subtract(expected).getNorm()).isLessThan(within);
  }
}
