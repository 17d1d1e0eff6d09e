package faintwind.calibration.correction;

import faintwind.calibration.run.Uncertain;
import java.util.List;
import java.util.Optional;

/**
 * The share of the arm's speed at which air is carried round, from readings of that air: by a light
 * vane, by a thread or smoke timed over a distance, or by the instrument itself, stood still beside
 * the path of the arm, which is loaded with an equal weight and turned at each speed.
 *
 * <p>share = Σ w v u / Σ w v², the weighted line through the origin of air speed u against arm
 * speed v with w = 1/u(u)² (JCGM 100:2008, H.3 without the constant); its standard uncertainty is
 * 1/√(Σ w v²), widened by the scatter about the line where that is larger (Birge 1932, from
 * memory).
 */
public final class CarriedShare {
  private CarriedShare() {}

  /**
   * One reading.
   *
   * @param arm_m_s speed of the arm at the radius of the ball, above 0
   * @param air_m_s speed of the air there, not negative
   * @param u_air_m_s its standard uncertainty, above 0
   */
  public record Reading(double arm_m_s, double air_m_s, double u_air_m_s) {
    public Reading {
      if (!(arm_m_s > 0) || !(air_m_s >= 0) || !(u_air_m_s > 0)) {
        throw new IllegalArgumentException(
            "arm_m_s = " + arm_m_s + ", air_m_s = " + air_m_s + ", u_air_m_s = " + u_air_m_s);
      }
    }

    /** Share at this speed alone. */
    public Uncertain share() {
      return Uncertain.of(air_m_s / arm_m_s, u_air_m_s / arm_m_s);
    }
  }

  /** The share of all readings together; empty where there is none. */
  public static Optional<Uncertain> of(List<Reading> readings) {
    double vv = 0;
    double vu = 0;
    for (Reading reading : readings) {
      double weight = 1 / (reading.u_air_m_s() * reading.u_air_m_s());
      vv += weight * reading.arm_m_s() * reading.arm_m_s();
      vu += weight * reading.arm_m_s() * reading.air_m_s();
    }
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    double share = vu / vv;
    double chi2 = 0;
    for (Reading reading : readings) {
      double miss = (reading.air_m_s() - share * reading.arm_m_s()) / reading.u_air_m_s();
      chi2 += miss * miss;
    }
    int freedom = readings.size() - 1;
    double birge = freedom > 0 ? Math.max(1, Math.sqrt(chi2 / freedom)) : 1;
    return Optional.of(Uncertain.of(share, birge / Math.sqrt(vv)));
  }
}
