package faintwind.calibration;

import org.apache.commons.math3.distribution.TDistribution;

/** Coverage factors for 95 % and effective degrees of freedom. */
public final class CoverageFactor {
  private static final double UPPER = 0.975;

  private CoverageFactor() {}

  /**
   * Two-sided 95 % factor of Student's t. Source: JCGM 100:2008, Table G.2.
   *
   * @param freedom degrees of freedom, above 0; infinity is allowed and gives 1.960
   */
  public static double of(double freedom) {
    if (!(freedom > 0)) {
      throw new IllegalArgumentException("freedom = " + freedom + ", allowed above 0");
    }
    return new TDistribution(Math.min(freedom, 1e8)).inverseCumulativeProbability(UPPER);
  }

  /**
   * Effective degrees of freedom of a sum: u_c⁴ / Σ (uᵢ⁴/νᵢ). Source: Welch and Satterthwaite, JCGM
   * 100:2008, equation (G.2b).
   *
   * @param u standard uncertainties of the parts
   * @param freedom their degrees of freedom, infinity where a part is taken as exactly known
   */
  public static double effectiveFreedom(double[] u, double[] freedom) {
    if (u.length != freedom.length) {
      throw new IllegalArgumentException("u has " + u.length + ", freedom " + freedom.length);
    }
    double squares = 0;
    double fourths = 0;
    for (int i = 0; i < u.length; i++) {
      squares += u[i] * u[i];
      fourths += Math.pow(u[i], 4) / freedom[i];
    }
    return fourths > 0 ? squares * squares / fourths : Double.POSITIVE_INFINITY;
  }
}
