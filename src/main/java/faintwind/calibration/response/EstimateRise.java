package faintwind.calibration.response;

import faintwind.calibration.Calibration;
import java.util.OptionalDouble;

/**
 * How fast the estimate of the speed can follow, against the metal that takes minutes. The complete
 * formula does not wait for the ball: it reads the slope of the signal, and what limits it is the
 * logger's noise. A line through the rows of a time T has a slope uncertain by σ √(12 h/T³), with σ
 * the noise of a row and h the step between rows (straight-line fit, common textbook form); T is
 * taken where that makes a twentieth of the speed (own choice), and the line shows a step from 10
 * to 90 % in 0.8 T. Never less than two rows.
 */
public final class EstimateRise {
  private static final double SHARE = 0.05;
  private static final double OF_LINE = 0.8;

  private EstimateRise() {}

  /** Time from 10 to 90 % of a change of the speed, s, at a speed in the reference air. */
  public static double s(Calibration calibration, double speed_m_s) {
    Formula formula = Formula.of(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double delta = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), air);
    double[] loss = formula.lossAndSlopes(speed_m_s, delta, air);
    double noise_K =
        calibration.performance().noise()
            / Math.abs(formula.path().curve().signalByDelta(delta, air.air_K()));
    double step_s = calibration.performance().rowStep_s();
    double slope_K_s = SHARE * speed_m_s * loss[1] * delta;
    double line_s = Math.cbrt(12 * step_s * Math.pow(noise_K / slope_K_s, 2));
    return Math.max(2 * step_s, OF_LINE * line_s);
  }
}
