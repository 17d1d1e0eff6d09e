package faintwind.calibration.speed.state;

import faintwind.calibration.response.AirPoint;

/**
 * The heat balance as a filter's process: difference Δ, heat flow q out of the resistor (as a
 * heating rate), bead and g = loss / loss of still air, with their covariance; in g the balance is
 * all but linear, so that no step of the wind bends the estimate. The equations are those of {@link
 * faintwind.calibration.response.ThermalPath}; over one step the linearised system is solved by its
 * exponential series (exponential Rosenbrock–Euler, Hochbruck and Ostermann 2010), so that steps of
 * many seconds stay exact. The change of the room's temperature is left out: its term is below a
 * thousandth of the balance indoors. For one thread.
 */
public final class HeatState {
  public static final int SIZE = 4;
  public static final int DELTA = 0;
  public static final int FLOW = 1;
  public static final int BEAD = 2;
  public static final int RATIO = 3;

  static final double LONGEST_STEP_S = 2;
  static final double MODEL_NOISE_K2_S = 1e-8;

  static final double GREATEST_RATIO = 20;

  private final FieldFormula formula;
  private final StateStep step;
  private final HeatMean mean = new HeatMean();
  private final StateCovariance covariance = new StateCovariance();
  private final double longest_s;

  /** Transition over the last advance where it took more than one step, or none. */
  private final double[] product = new double[StateStep.KEPT];

  private int steps;
  private double stillAt_K;
  private double still_1_s;
  private double stillSlope;

  HeatState(FieldFormula formula) {
    this.formula = formula;
    step = new StateStep(formula.path());
    longest_s = Math.min(LONGEST_STEP_S, Math.min(step.beadTime_s(), step.heaterTime_s()));
  }

  /** Difference, K. */
  public double delta_K() {
    return mean.delta_K;
  }

  /** Heat flow out of the resistor, as a heating rate. */
  public double flow_K_s() {
    return mean.flow_K_s;
  }

  /** Difference as the bead has it, K. */
  public double bead_K() {
    return mean.bead_K;
  }

  /** Loss over that of still air. */
  public double ratio() {
    return mean.ratio;
  }

  /** The four of them, in their order. */
  public double[] mean() {
    return new double[] {mean.delta_K, mean.flow_K_s, mean.bead_K, mean.ratio};
  }

  HeatMean believed() {
    return mean;
  }

  StateCovariance covariance() {
    return covariance;
  }

  /** Puts means, covariance and the transition over the last advance one after the other. */
  void store(double[] store, int at) {
    store[at] = mean.delta_K;
    store[at + 1] = mean.flow_K_s;
    store[at + 2] = mean.bead_K;
    store[at + 3] = mean.ratio;
    covariance.store(store, at + SIZE);
    if (steps == 1) {
      step.store(store, at + SIZE + StateCovariance.KEPT);
    } else {
      System.arraycopy(product, 0, store, at + SIZE + StateCovariance.KEPT, StateStep.KEPT);
    }
  }

  /** Variance of ln(loss). */
  public double logVariance() {
    double least = Math.max(StateStep.LEAST_RATIO, mean.ratio);
    return covariance.p9 / (least * least);
  }

  void copyFrom(HeatState other) {
    mean.copyFrom(other.mean);
    covariance.copyFrom(other.covariance);
  }

  /** Starts anew: nothing known of the loss, difference as just read. */
  void begin(double read_K, double flowing_K_s, double heating_K_s) {
    mean.delta_K = read_K;
    mean.flow_K_s = flowing_K_s;
    mean.bead_K = read_K;
    mean.ratio = OwnChoices.FIRST_RATIO;
    covariance.begin(
        OwnChoices.FIRST_DELTA_VARIANCE_K2,
        square(OwnChoices.FIRST_FLOW_SHARE * heating_K_s),
        OwnChoices.FIRST_DELTA_VARIANCE_K2,
        OwnChoices.FIRST_RATIO_VARIANCE);
  }

  /** Forgets the loss and the heat flow, as when the heater is switched. */
  void forgetLoss(double heating_K_s) {
    mean.ratio = Math.max(1, Math.min(3, mean.ratio));
    covariance.p4 += square(OwnChoices.SWITCHED_FLOW_SHARE * heating_K_s);
    covariance.p9 += OwnChoices.SWITCHED_RATIO_VARIANCE;
  }

  private static double square(double x) {
    return x * x;
  }

  /** Loss of still air, by its tangent where the last step began, 1/s. */
  double stillNearby_1_s() {
    return still_1_s + stillSlope * (mean.delta_K - stillAt_K);
  }

  /** Leaves room for a sudden change of the loss ratio with this variance. */
  void leaveRoom(double variance) {
    covariance.p9 += variance;
  }

  /**
   * The heater was lost at some moment within a time from now on: what it still gave until then
   * goes, as all its heat does, through the resistor.
   */
  void lostWithin(double within_s, double heating_K_s) {
    double more_K_s = 0.5 * within_s * heating_K_s / step.heaterTime_s();
    mean.flow_K_s += more_K_s;
    covariance.p4 += more_K_s * more_K_s / 3;
  }

  /**
   * Advances in time.
   *
   * @param duration_s how far
   * @param heating_K_s heating rate meanwhile
   * @param walk2_1_s variance of the random walk of the loss, relative, per second
   */
  void advance(double duration_s, double heating_K_s, double walk2_1_s, AirPoint air) {
    double least = mean.ratio < 1 ? 1 : mean.ratio > GREATEST_RATIO ? GREATEST_RATIO : mean.ratio;
    double walk = walk2_1_s * least * least;
    if (duration_s > 0 && duration_s <= longest_s) {
      steps = 1;
      step.lasts(duration_s);
      step(heating_K_s, walk * (0.5 * duration_s), MODEL_NOISE_K2_S * (0.5 * duration_s), air);
      return;
    }
    steps = (int) Math.ceil(duration_s / longest_s);
    StateStep.storeNone(product, 0);
    double h = duration_s / steps;
    for (int i = 0; i < steps; i++) {
      step.lasts(h);
      step(heating_K_s, walk * (0.5 * h), MODEL_NOISE_K2_S * (0.5 * h), air);
      step.follow(product, 0);
    }
  }

  /** A step, and P ← Φ (P + Q) Φᵀ + Q with Q half of what is added over it. */
  private void step(double heating_K_s, double walk2, double model2_K2, AirPoint air) {
    still_1_s = formula.stillLoss_1_s(mean.delta_K, air);
    stillSlope = formula.stillSlope();
    stillAt_K = mean.delta_K;
    step.take(mean, heating_K_s, still_1_s, stillSlope);
    mean.delta_K += step.moveDelta_K;
    mean.flow_K_s += step.moveFlow_K_s;
    mean.bead_K += step.moveBead_K;
    covariance.p9 += walk2;
    covariance.p0 += model2_K2;
    covariance.forwards(step);
    covariance.p9 += walk2;
    covariance.p0 += model2_K2;
  }
}
