package faintwind.physics.arm;

/**
 * A straight beam held at one end (Euler and Bernoulli; Gere and Timoshenko, Mechanics of
 * Materials, table of deflections of cantilever beams, from memory). Good while the deflection is
 * small against the length.
 *
 * @param length_m free length, m
 * @param modulus_Pa Young's modulus E, Pa
 * @param inertia_m4 second moment of area I, m⁴
 */
public record Beam(double length_m, double modulus_Pa, double inertia_m4) {
  /**
   * E of softwood along the grain, Pa: spruce and pine are given as 9 to 12 GPa (Wood Handbook of
   * the US Forest Products Laboratory, from memory).
   */
  public static final double SOFTWOOD_PA = 10e9;

  /** Density of dry softwood, kg/m³ (the same, from memory: 400 to 500). */
  public static final double SOFTWOOD_KG_M3 = 450;

  public Beam {
    if (!(length_m > 0 && modulus_Pa > 0 && inertia_m4 > 0)) {
      throw new IllegalArgumentException(
          "length " + length_m + " m, E " + modulus_Pa + " Pa, I " + inertia_m4 + " m⁴, above 0");
    }
  }

  /** I = b·h³/12 of a rectangle, m⁴; h stands upright. */
  public static double rectangle_m4(double width_m, double height_m) {
    return width_m * height_m * height_m * height_m / 12;
  }

  /** I = π·d⁴/64 of a round rod, m⁴. */
  public static double round_m4(double diameter_m) {
    return Math.PI * Math.pow(diameter_m, 4) / 64;
  }

  /** Deflection of the free end under a force across it there, m: F·L³/(3·E·I). */
  public double tipDeflection_m(double force_N) {
    return force_N * Math.pow(length_m, 3) / (3 * modulus_Pa * inertia_m4);
  }

  /** Deflection of the free end under an even load, m: w·L⁴/(8·E·I). */
  public double evenDeflection_m(double load_N_m) {
    return load_N_m * Math.pow(length_m, 4) / (8 * modulus_Pa * inertia_m4);
  }
}
