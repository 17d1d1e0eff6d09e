package faintwind.physics;

import java.util.Locale;

/**
 * A straight wire that leaves a ball and loses heat to the air along its free length: a fin whose
 * far end has the temperature of what it is joined to, G = M·(cosh m·L − θ_L/θ_b)/sinh m·L, M =
 * √(h·p·k·A), m = √(h·p/(k·A)) (Incropera, Table 3.4, case C). Cable and joint are taken to be at
 * the air's temperature, θ_L = 0, so a shorter wire loses more: M·coth m·L. The covering's thermal
 * resistance is between core and air.
 *
 * @param core_m diameter of the conducting core, m
 * @param outer_m diameter over the covering, m; equal to the core for a bare wire
 * @param length_m free length in the air, m
 * @param conductivity_W_mK thermal conductivity of the core, W/(m K)
 */
public record LeadWire(double core_m, double outer_m, double length_m, double conductivity_W_mK) {

  /** Unfilled plastic covering: 0.1–0.25 W/(m K), common range. */
  private static final double COVERING_W_MK = 0.2;

  /** A joint is never nearer than this: a bead of solder has a size of its own. */
  private static final double NEAREST_JOINT_M = 1e-3;

  /**
   * Checks the sizes.
   *
   * @throws IllegalArgumentException where a size is not positive or the covering is inside the
   *     core
   */
  public LeadWire {
    if (!(core_m > 0 && outer_m >= core_m && length_m >= 0 && conductivity_W_mK > 0)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "lead wire: core_m = %s, outer_m = %s, length_m = %s, conductivity_W_mK = %s",
              core_m,
              outer_m,
              length_m,
              conductivity_W_mK));
    }
  }

  /**
   * Heat taken off per kelvin of the ball's excess, W/K.
   *
   * @param film the air
   * @param air_K its temperature, K
   * @param speed_m_s speed across the wire, m/s
   * @param excess_K the ball above the air, K
   * @param factor on the wire's convection, 1 for the published formulas
   */
  public double conductance_W_K(
      FilmAir film, double air_K, double speed_m_s, double excess_K, double factor) {
    // Along the wire the excess falls from the ball's to nothing: half of it stands for the whole.
    double wireExcess_K = 0.5 * Math.abs(excess_K);
    double nu =
        WireConvection.nusselt(
            film, air_K, speed_m_s, new WireConvection.Wire(outer_m, wireExcess_K));
    double outside = factor * nu * film.conductivity_W_mK(air_K + wireExcess_K / 2) * Math.PI;
    return joined_W_K(outside / (1 + outside * coveringResistance_mK_W()), 0);
  }

  /**
   * The fin joined to something of a known temperature (Incropera, Table 3.4, case C).
   *
   * @param loss_W_mK heat lost per metre of wire and kelvin (h·p), W/(m K)
   * @param farShare excess of the far end over that of the ball, θ_L/θ_b
   */
  public double joined_W_K(double loss_W_mK, double farShare) {
    double m = Math.sqrt(loss_W_mK / kA_Wm_K());
    double mL = m * Math.max(NEAREST_JOINT_M, length_m);
    // (cosh mL − x)/sinh mL, in a form that does not overflow for long wires
    double e = Math.exp(-mL);
    return m * kA_Wm_K() * (1 + e * e - 2 * farShare * e) / (1 - e * e);
  }

  /**
   * The fin whose far end passes no heat, M·tanh m·L (Incropera, Table 3.4, case B): the least that
   * a wire can take.
   *
   * @param loss_W_mK heat lost per metre of wire and kelvin (h·p), W/(m K)
   */
  public double free_W_K(double loss_W_mK) {
    double m = Math.sqrt(loss_W_mK / kA_Wm_K());
    return m * kA_Wm_K() * Math.tanh(m * length_m);
  }

  private double kA_Wm_K() {
    return conductivity_W_mK * Math.PI * core_m * core_m / 4;
  }

  private double coveringResistance_mK_W() {
    return Math.log(outer_m / core_m) / (2 * Math.PI * COVERING_W_MK);
  }
}
