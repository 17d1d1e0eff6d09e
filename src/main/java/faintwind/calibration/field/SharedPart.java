package faintwind.calibration.field;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.StillDraught;
import faintwind.calibration.speed.state.FieldFormula;

/**
 * Which part of an expanded uncertainty all speeds of one instrument share: that of its calibration
 * and what the loss of still air may have changed by since. It does not average away over time, and
 * it drops out of the difference of two equal speeds. Without a calibration at hand nothing is
 * known of the parts: then the whole counts as shared in a mean, and nothing as shared in a
 * difference.
 */
public final class SharedPart {
  private static final double FACTOR = 2;
  private static final double MIDDLE_K = 15;
  private static final int ROUNDS = 20;
  private static final int STEPS = 64;
  private static final double LOWEST_M_S = FieldFormula.LEAST_SPEED_M_S;
  private static final double HIGHEST_M_S = 20;
  private static final double STEP = Math.log(HIGHEST_M_S / LOWEST_M_S) / STEPS;

  private final double[] shared_m_s;

  private SharedPart(double[] shared_m_s) {
    this.shared_m_s = shared_m_s;
  }

  /** Where the calibration is not at hand. */
  public static SharedPart unknown() {
    return new SharedPart(new double[0]);
  }

  /** By the calibration that the speeds were found with, in its own air. */
  public static SharedPart of(Calibration calibration) {
    FieldFormula formula = new FieldFormula(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double[] shared_m_s = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      shared_m_s[i] = at(formula, air, LOWEST_M_S * Math.exp(i * STEP));
    }
    return new SharedPart(shared_m_s);
  }

  private static double at(FieldFormula formula, AirPoint air, double speed_m_s) {
    double heating_K_s = formula.path().heating_K_s();
    double delta_K = MIDDLE_K;
    for (int i = 0; i < ROUNDS; i++) {
      delta_K = (delta_K + heating_K_s / formula.loss_1_s(speed_m_s, delta_K, air)) / 2;
    }
    double still_1_s = formula.stillLoss_1_s(delta_K, air);
    double since = Formula.U_STILL_SINCE * still_1_s / formula.loss_1_s(speed_m_s, delta_K, air);
    double slope_m_s = formula.speedByLogLoss_m_s(speed_m_s, delta_K, air);
    double calibration = formula.relativeLossUncertainty(delta_K, air.air_K(), 1);
    double side_m_s = FACTOR * slope_m_s * Math.hypot(calibration, since);
    return Math.hypot(side_m_s, StillDraught.u95_m_s(speed_m_s, formula.stillDraught_m_s()));
  }

  /** Whether the parts can be told from each other. */
  public boolean isKnown() {
    return shared_m_s.length > 0;
  }

  /** What of the expanded uncertainty of a speed stays in a mean, m/s. */
  public double shared_m_s(double speed_m_s, double u95_m_s) {
    return isKnown() ? Math.min(u95_m_s, read(speed_m_s)) : u95_m_s;
  }

  /** What of it averages away, m/s. */
  public double own_m_s(double speed_m_s, double u95_m_s) {
    double shared = shared_m_s(speed_m_s, u95_m_s);
    return Math.sqrt(Math.max(0, u95_m_s * u95_m_s - shared * shared));
  }

  private double read(double speed_m_s) {
    double at =
        Math.log(Math.max(LOWEST_M_S, Math.min(HIGHEST_M_S, speed_m_s)) / LOWEST_M_S) / STEP;
    int below = (int) Math.min(STEPS - 1, Math.floor(at));
    double share = at - below;
    return (1 - share) * shared_m_s[below] + share * shared_m_s[below + 1];
  }
}
