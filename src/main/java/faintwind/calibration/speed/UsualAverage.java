package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.Performance;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.speed.state.FieldFormula;

/**
 * The averaging time where none is asked for: the shortest of a few over which the noise of the
 * instrument stays below five per cent of a speed in the middle of the calibrated range. Longer
 * ones would only round the gusts. The five per cent are this program's choice.
 */
public final class UsualAverage {
  /** Standard deviation of the averaged speed by noise, relative, that is let pass. */
  public static final double NOISE = 0.05;

  private static final double MIDDLE_K = 15;
  private static final double[] TIMES_S = {5, 10, 15, 20, 30, 40, 60, 120};

  private UsualAverage() {}

  /** The averaging time of an instrument, s. */
  public static double of(Calibration calibration) {
    for (double time_s : TIMES_S) {
      if (noise(calibration, time_s) <= NOISE) {
        return time_s;
      }
    }
    return TIMES_S[TIMES_S.length - 1];
  }

  /**
   * Relative standard deviation of a speed averaged over a time A, by the noise of the rows. The
   * mean loss is (p − Δθ/A)/θ; each end of θ is known from the rows of a quarter of A about it, so
   * that the relative loss has √2 · noise · √(4 step/A) / (A p).
   */
  static double noise(Calibration calibration, double average_s) {
    FieldFormula formula = new FieldFormula(calibration);
    Performance performance = calibration.performance();
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double heating_K_s = formula.path().heating_K_s();
    double middle_m_s =
        Math.sqrt(calibration.coverage().lowest_m_s() * calibration.coverage().highest_m_s());
    double delta_K = heating_K_s / formula.loss_1_s(middle_m_s, MIDDLE_K, air);
    double slope = formula.speedByLogLoss_m_s(middle_m_s, delta_K, air) / middle_m_s;
    double noise_K = performance.noise() / Math.abs(calibration.signal().perKelvin());
    double end_K = noise_K * Math.sqrt(Math.min(1, 4 * performance.rowStep_s() / average_s));
    return slope * Math.sqrt(2) * end_K / (average_s * heating_K_s);
  }
}
