package faintwind.physics;

/**
 * A straight wire that leaves a ball and loses heat to the air along its free length: a fin with an
 * end that passes no heat, G = √(h·p·k·A)·tanh(m·L), m = √(h·p/(k·A)) (Incropera, fins of uniform
 * cross-section, adiabatic tip). The covering's thermal resistance stands between core and air.
 *
 * @param core_m diameter of the conducting core, m
 * @param outer_m diameter over the covering, m; equal to the core for a bare wire
 * @param length_m free length in the air, m
 * @param conductivity_W_mK thermal conductivity of the core, W/(m K)
 */
public record LeadWire(double core_m, double outer_m, double length_m, double conductivity_W_mK) {

  /** Unfilled plastic covering: 0.1–0.25 W/(m K), common range. */
  private static final double COVERING_W_MK = 0.2;

  /**
   * Checks the sizes.
   *
   * @throws IllegalArgumentException where a size is not positive or the covering is inside the
   *     core
   */
  public LeadWire {
    if (!(core_m > 0 && outer_m >= core_m && length_m >= 0 && conductivity_W_mK > 0)) {
      throw new IllegalArgumentException(
          "lead wire: core_m = %s, outer_m = %s, length_m = %s, conductivity_W_mK = %s"
              .formatted(core_m, outer_m, length_m, conductivity_W_mK));
    }
  }

  /**
   * Heat taken off per kelvin of the ball's excess, W/K.
   *
   * @param film the air
   * @param air_K its temperature, K
   * @param speed_m_s speed across the wire, m/s
   * @param excess_K the ball above the air, K
   */
  public double conductance_W_K(FilmAir film, double air_K, double speed_m_s, double excess_K) {
    // Along the wire the excess falls from the ball's to nothing: half of it stands for the whole.
    double wireExcess_K = 0.5 * Math.abs(excess_K);
    double nu =
        WireConvection.nusselt(
            film, air_K, speed_m_s, new WireConvection.Wire(outer_m, wireExcess_K));
    double outside = nu * film.conductivity_W_mK(air_K + wireExcess_K / 2) * Math.PI;
    return fin_W_K(outside / (1 + outside * coveringResistance_mK_W()));
  }

  /**
   * The fin with a given loss.
   *
   * @param loss_W_mK heat lost per metre of wire and kelvin (h·p), W/(m K)
   */
  public double fin_W_K(double loss_W_mK) {
    double kA = conductivity_W_mK * Math.PI * core_m * core_m / 4;
    return Math.sqrt(loss_W_mK * kA) * Math.tanh(length_m * Math.sqrt(loss_W_mK / kA));
  }

  private double coveringResistance_mK_W() {
    return Math.log(outer_m / core_m) / (2 * Math.PI * COVERING_W_MK);
  }
}
