package faintwind.calibration.build;

import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.Uncertain;
import java.util.Optional;

/**
 * Heat capacity of the heated ball by its record: mass · specific heat of the metal, and for glue,
 * coat and resistor 4 ± 3 % of it (common practice, no source).
 */
public final class BuiltHeat {
  static final double FILLED = 1.04;

  private BuiltHeat() {}

  /** Heat capacity, J/K, with its standard uncertainty; empty where mass or metal are unknown. */
  public static Optional<Uncertain> capacity_J_K(BuildFacts build) {
    if (build.heatedMass_kg().isEmpty() || build.specificHeat_J_kgK().isEmpty()) {
      return Optional.empty();
    }
    Uncertain mass = build.heatedMass_kg().get();
    Uncertain heat = build.specificHeat_J_kgK().get();
    double relative =
        Math.hypot(
            relative(mass, BuildPart.MASS.usual()),
            relative(heat, BuildPart.SPECIFIC_HEAT.usual()));
    double value = FILLED * mass.value() * heat.value();
    return Optional.of(
        Uncertain.of(value, value * Math.hypot(relative, BuildPart.FILLING.usual())));
  }

  /** Relative standard uncertainty of a fact, or another one where none is stated. */
  public static double relative(Uncertain x, double otherwise) {
    return x.u().isPresent() ? x.u().getAsDouble() / Math.abs(x.value()) : otherwise;
  }
}
