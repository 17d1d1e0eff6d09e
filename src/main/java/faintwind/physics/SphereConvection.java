package faintwind.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * Nusselt numbers of a single smooth sphere, dimensionless, each with its published range. Nu = 2
 * is pure conduction into still air without buoyancy.
 */
public final class SphereConvection {
  /** Nusselt number of conduction alone (every sphere correlation's limit). */
  public static final double CONDUCTION = 2.0;

  private static final String WHITAKER = "range.whitaker";
  private static final String CHURCHILL = "range.churchill-sphere";

  private SphereConvection() {}

  /**
   * Forced: Nu = 2 + (0.4 Re^½ + 0.06 Re^⅔) Pr^0.4 (µ/µs)^¼, properties of the free stream, µs at
   * the surface. Source: S. Whitaker, AIChE J. 18 (1972) 361, doi 10.1002/aic.690180219; 3.5 &lt;
   * Re &lt; 7.6e4, 0.71 &lt; Pr &lt; 380, 1 &lt; µ/µs &lt; 3.2. A ball warmer than air has µ/µs
   * just below 1 and air a Pr of 0.70–0.71: the last digits are not reported as leaving the range
   * (0.68 and 0.8 are the edges used here).
   *
   * @param re Reynolds number
   * @param pr Prandtl number
   * @param viscosityRatio viscosity of the stream over that at the surface
   */
  public static Ranged whitaker(double re, double pr, double viscosityRatio) {
    List<Ranged.RangeLeft> left = new ArrayList<>();
    if (re > 0) { // at rest the forced part is absent, which is no use of the correlation
      left.addAll(Ranged.check(WHITAKER, "Re", re, 3.5, 7.6e4));
    }
    left.addAll(Ranged.check(WHITAKER, "Pr", pr, 0.68, 380));
    left.addAll(Ranged.check(WHITAKER, "µ/µs", viscosityRatio, 0.8, 3.2));
    return new Ranged(CONDUCTION + whitakerAboveConduction(re, pr, viscosityRatio), left);
  }

  static double whitakerAboveConduction(double re, double pr, double viscosityRatio) {
    double third = Math.cbrt(re);
    return (0.4 * Math.sqrt(re) + 0.06 * third * third)
        * Math.pow(pr, 0.4)
        * Math.sqrt(Math.sqrt(viscosityRatio));
  }

  /**
   * Natural: Nu = 2 + 0.589 Ra^¼ / [1 + (0.469/Pr)^(9/16)]^(4/9), film properties. Source: S. W.
   * Churchill 1983 (Heat Exchanger Design Handbook §2.5.7), in Incropera eq. 9.35 and Nellis and
   * Klein §6.2.3; Ra ≤ 1e11, Pr ≥ 0.7. The form with a turbulent factor differs by 6e-5 below Ra
   * 1e4.
   */
  public static Ranged churchill(double ra, double pr) {
    List<Ranged.RangeLeft> left = new ArrayList<>();
    left.addAll(Ranged.check(CHURCHILL, "Ra", ra, 0, 1e11));
    left.addAll(Ranged.check(CHURCHILL, "Pr", pr, 0.69, Double.MAX_VALUE));
    return new Ranged(CONDUCTION + churchillAboveConduction(ra, pr), left);
  }

  static double churchillAboveConduction(double ra, double pr) {
    double x = 1 + Math.pow(0.469 / pr, 9.0 / 16);
    return 0.589 * Math.sqrt(Math.sqrt(ra)) / Math.pow(x, 4.0 / 9);
  }

  /**
   * Forced and natural together: Nu = 2 + [(Nu_F − 2)³ + (Nu_N − 2)³]^⅓: the third-power rule for
   * assisting and transverse flow (Incropera §9.9) on the parts above conduction. The rule itself
   * is worth about 8 % at 0.05 m/s for these balls.
   */
  public static Ranged mixed(Ranged forced, Ranged natural) {
    double f = forced.value() - CONDUCTION;
    double n = natural.value() - CONDUCTION;
    return forced.with(
        natural, CONDUCTION + mixedAboveConduction(f, n, ModelForm.PUBLISHED.mixing()));
  }

  static double mixedAboveConduction(double f, double n, double exponent) {
    return exponent == 3
        ? Math.cbrt(f * f * f + n * n * n)
        : Math.pow(Math.pow(f, exponent) + Math.pow(n, exponent), 1 / exponent);
  }
}
