package faintwind.physics.plating;

/**
 * A layer put on by a current: Faraday's law with an efficiency, and the hydrogen of the rest.
 *
 * @param deposit the metal of the layer
 * @param area_m2 surface of all that hangs in the bath at once, m², above 0
 * @param current_A_m2 current density, A/m², above 0
 * @param efficiency share of the charge that deposits metal, above 0 to 1
 */
public record PlatingBath(Deposit deposit, double area_m2, double current_A_m2, double efficiency) {

  public PlatingBath {
    if (!(area_m2 > 0 && current_A_m2 > 0 && efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException(
          "area "
              + area_m2
              + " m², current density "
              + current_A_m2
              + " A/m² (allowed above 0), "
              + "efficiency "
              + efficiency
              + " (allowed above 0 to 1)");
    }
  }

  /** Current, A: I = i·A. */
  public double current_A() {
    return current_A_m2 * area_m2;
  }

  /** Charge for a thickness, C: Q = t·ρ·A·n·F/(η·M). */
  public double charge_C(double thickness_m) {
    return deposit.charge_C(thickness_m, efficiency, area_m2);
  }

  /** Time for a thickness, s: Q/I. */
  public double time_s(double thickness_m) {
    return charge_C(thickness_m) / current_A();
  }

  /** Thickness after a time, m. */
  public double thickness_m(double time_s) {
    return deposit.thickness_m(current_A() * time_s, efficiency, area_m2);
  }

  /** Mass of a layer of a thickness, kg. */
  public double mass_kg(double thickness_m) {
    return deposit.mass_kg(charge_C(thickness_m), efficiency);
  }
}
