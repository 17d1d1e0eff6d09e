package faintwind.physics;

import java.util.List;

/**
 * One ball as heat sees it: of one temperature throughout (see the Biot number), losing heat from
 * its surface and along its leads.
 *
 * @param diameter_m diameter, m
 * @param heatCapacity_J_K heat capacity of the drilled, filled ball, J/K
 * @param emissivity thermal emissivity of its surface, 0 to 1
 * @param leads the wires that leave it
 */
public record Ball(
    double diameter_m, double heatCapacity_J_K, double emissivity, List<LeadWire> leads) {

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException outside 1–100 mm, at no heat capacity, or outside 0–1
   */
  public Ball {
    leads = List.copyOf(leads);
    if (!(diameter_m >= 0.001 && diameter_m <= 0.1)) {
      throw new IllegalArgumentException("diameter_m = " + diameter_m + ", allowed 0.001 to 0.1");
    }
    if (!(heatCapacity_J_K > 0)) {
      throw new IllegalArgumentException("heatCapacity_J_K = " + heatCapacity_J_K + ", above 0");
    }
    if (!(emissivity >= 0 && emissivity <= 1)) {
      throw new IllegalArgumentException("emissivity = " + emissivity + ", allowed 0 to 1");
    }
  }

  /** Surface π·D², m². */
  public double area_m2() {
    return Math.PI * diameter_m * diameter_m;
  }

  /** Biot number h·D/(6k) of the lumped ball (definition); safe below 0.1. */
  public double biot(double coefficient_W_m2K, double metalConductivity_W_mK) {
    return coefficient_W_m2K * diameter_m / (6 * metalConductivity_W_mK);
  }
}
