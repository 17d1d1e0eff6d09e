package faintwind.calibration.pool;

import java.util.List;
import java.util.Map;

/**
 * What each instrument keeps for itself, and by how much it usually differs within a class, as a
 * logarithm (own choices, no source). It is compared, never made alike: a wrong radius, a fouled
 * ball or leads that touch it show here.
 */
public enum Own {
  /** Heat that moving air takes away, over the heat that the resistor gives. */
  CONVECTION(0.04, Map.of("conduction", 1.0, "forced", 1.0, "heating", -1.0)),
  /** Heating rate: the resistor's power over the heat capacity. */
  HEATING(0.05, Map.of("heating", 1.0)),
  LEADS(0.4, Map.of("leads", 1.0));

  private final double between;
  private final Map<String, Double> weights;

  Own(double between, Map<String, Double> weights) {
    this.between = between;
    this.weights = weights;
  }

  double between() {
    return between;
  }

  /** What a session says of it alone. */
  SessionShown of(SessionShown all) {
    return all.sums(List.of(name()), List.of(weights));
  }
}
