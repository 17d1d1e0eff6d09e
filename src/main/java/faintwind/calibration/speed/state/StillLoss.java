package faintwind.calibration.speed.state;

import faintwind.calibration.response.AirPoint;

/**
 * Loss of still air about the last difference and air asked for, by its tangent: the same within a
 * millionth, and many times quicker. For one thread.
 */
public final class StillLoss {
  private static final double REACH_K = 0.1;
  private static final double AIR_REACH_K = 0.02;

  private final FieldFormula formula;
  private double delta0_K = Double.MAX_VALUE;
  private double air0_K;
  private double loss0_1_s;
  private double slope;

  public StillLoss(FieldFormula formula) {
    this.formula = formula;
  }

  /** Loss of still air, 1/s. */
  public double at(double delta_K, AirPoint air) {
    if (Math.abs(delta_K - delta0_K) > REACH_K || Math.abs(air.air_K() - air0_K) > AIR_REACH_K) {
      delta0_K = delta_K;
      air0_K = air.air_K();
      loss0_1_s = formula.stillLoss_1_s(delta_K, air);
      slope = formula.stillSlope();
    }
    return loss0_1_s + slope * (delta_K - delta0_K);
  }

  /** Change of the last loss with the difference, 1/(s K). */
  double slope() {
    return slope;
  }
}
