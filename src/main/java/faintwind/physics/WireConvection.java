package faintwind.physics;

/**
 * Nusselt numbers of a thin round wire across the flow. Only the share of heat that the leads take
 * rests on them; they are good to about a fifth for wires. Not for balls: their limit at rest is
 * not 2.
 */
public final class WireConvection {
  private static final double AT_REST = 0.3; // constant of Churchill and Bernstein

  private WireConvection() {}

  /**
   * Natural, horizontal cylinder: Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}².
   * Source: S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049 (from memory);
   * Ra ≤ 1e12.
   */
  public static double natural(double ra, double pr) {
    double f = Math.pow(1 + Math.pow(0.559 / pr, 9.0 / 16), 8.0 / 27);
    double root = 0.60 + 0.387 * Math.pow(ra, 1.0 / 6) / f;
    return root * root;
  }

  /**
   * Forced, cylinder in cross flow: Nu = 0.3 + 0.62 Re^½ Pr^⅓ / [1 + (0.4/Pr)^⅔]^¼ · [1 +
   * (Re/282000)^(5/8)]^(4/5). Source: S. W. Churchill, M. Bernstein, J. Heat Transfer 99 (1977)
   * 300; Re·Pr &gt; 0.2.
   */
  public static double forced(double re, double pr) {
    double f = Math.pow(1 + Math.pow(0.4 / pr, 2.0 / 3), 0.25);
    double turbulent = Math.pow(1 + Math.pow(re / 282_000, 5.0 / 8), 4.0 / 5);
    return AT_REST + 0.62 * Math.sqrt(re) * Math.cbrt(pr) / f * turbulent;
  }

  /**
   * A wire in the air.
   *
   * @param diameter_m outer diameter, m
   * @param excess_K its mean excess over the air, K
   */
  record Wire(double diameter_m, double excess_K) {}

  /** Both together by the third-power rule, the forced part counted above its value at rest. */
  static double nusselt(FilmAir film, double air_K, double speed_m_s, Wire wire) {
    double film_K = air_K + wire.excess_K() / 2;
    double nu = film.kinematicViscosity_m2_s(film_K);
    double pr = film.prandtl(film_K);
    double d = wire.diameter_m();
    double gr = Constants.GRAVITY_M_S2 / film_K * wire.excess_K() * d * d * d / (nu * nu);
    double n = natural(gr * pr, pr);
    double f = forced(speed_m_s * d / nu, pr) - AT_REST;
    return Math.cbrt(n * n * n + f * f * f);
  }
}
