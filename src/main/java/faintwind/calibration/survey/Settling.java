package faintwind.calibration.survey;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.speed.UsualAverage;
import faintwind.calibration.speed.state.FieldFormula;

/**
 * How long an instrument waits at a new place before its speed counts: three time constants of the
 * ball (5 % of the old difference is left, and the estimator reckons with that rest), and one
 * averaging time, so that no average reaches back to the place before. Own choice, no source.
 *
 * @param stillTime_s time constant in still air
 * @param movingTime_s at the lowest calibrated speed
 * @param average_s averaging time that suits the instrument
 */
public record Settling(double stillTime_s, double movingTime_s, double average_s) {
  /** By a calibration, in its own air. */
  public static Settling of(Calibration calibration) {
    FieldFormula formula = new FieldFormula(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double lowest_m_s = calibration.coverage().lowest_m_s();
    return new Settling(
        1 / formula.stillLoss_1_s(OwnChoices.MIDDLE_K, air),
        1 / formula.loss_1_s(lowest_m_s, OwnChoices.MIDDLE_K, air),
        UsualAverage.of(calibration));
  }

  /** Where a person says how long to wait, averages being half of it at most. */
  public static Settling typed(double settle_s) {
    double constant_s = settle_s / (2 * OwnChoices.CONSTANTS);
    return new Settling(constant_s, constant_s, settle_s / 2);
  }

  /** Wait at any place, however still. */
  public double atMost_s() {
    return OwnChoices.CONSTANTS * stillTime_s + average_s;
  }

  /** Wait where the air moves at least as fast as the lowest calibrated speed. */
  public double moving_s() {
    return OwnChoices.CONSTANTS * movingTime_s + average_s;
  }
}
