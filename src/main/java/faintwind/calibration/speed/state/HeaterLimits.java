package faintwind.calibration.speed.state;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;

/**
 * What the heat balance of a heated ball can show at all.
 *
 * @param greatestLoss_1_s loss at twice the highest calibrated speed, or 4 m/s if that is more
 * @param stillDelta_K difference in still air at the calibration's supply and air
 */
public record HeaterLimits(double greatestLoss_1_s, double stillDelta_K) {
  private static final double LEAST_TOP_M_S = 4;

  public static HeaterLimits of(Calibration calibration, FieldFormula formula) {
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double top_m_s = Math.max(LEAST_TOP_M_S, 2 * calibration.coverage().highest_m_s());
    return new HeaterLimits(
        formula.loss_1_s(top_m_s, 5, air), formula.stillDelta_K(formula.path().heating_K_s(), air));
  }
}
