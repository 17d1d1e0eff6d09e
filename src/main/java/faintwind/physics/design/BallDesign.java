package faintwind.physics.design;

import faintwind.physics.Interval;
import faintwind.physics.part.Coat;
import faintwind.physics.part.Metal;
import faintwind.physics.plating.PlatingPlan;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the two balls are to be.
 *
 * @param metal their metal
 * @param coat their surface
 * @param diameter_m diameter with its tolerance, m
 * @param bore the holes
 * @param plating how they are plated, where they are
 */
public record BallDesign(
    Metal metal, Coat coat, Interval diameter_m, Bore bore, Optional<PlatingPlan> plating) {

  /** 118° twist drill: its point is r·tan(31°) long. */
  private static final double POINT = Math.tan(Math.toRadians(31));

  /**
   * The holes: one in each ball.
   *
   * @param diameter_m diameter, m
   * @param heatedDepth_m depth at full diameter in the heated ball, m; empty for a hole right
   *     through
   * @param referenceDepth_m the same in the reference ball
   */
  public record Bore(
      double diameter_m, OptionalDouble heatedDepth_m, OptionalDouble referenceDepth_m) {}

  /** The diameter as a fraction of an inch, such as "3/8", where it is one of sixteenths. */
  public Optional<String> inches() {
    double sixteenths = diameter_m.nominal() / 0.0254 * 16;
    long whole = Math.round(sixteenths);
    if (Math.abs(sixteenths - whole) > 1e-3 || whole < 1) {
      return Optional.empty();
    }
    long over = Math.min(16, Long.lowestOneBit(whole));
    long below = 16 / over;
    return Optional.of(below == 1 ? String.valueOf(whole / 16) : whole / over + "/" + below);
  }

  /** Length of the drill's point beyond the full diameter, m. */
  public double point_m() {
    return POINT * bore.diameter_m() / 2;
  }

  /** Depth of the dome that the hole takes from the ball's outline at one end, m. */
  public double dome_m() {
    double r = bore.diameter_m() / 2;
    double big = diameter_m.nominal() / 2;
    return big - Math.sqrt(big * big - r * r);
  }

  /** Length of a hole right through, along its wall, m. */
  public double wall_m() {
    return diameter_m.nominal() - 2 * dome_m();
  }

  /** Usable length of a hole, m: its depth, or the ball's diameter where it goes right through. */
  public double length_m(OptionalDouble depth_m) {
    return depth_m.orElse(diameter_m.nominal());
  }

  /**
   * Volume that a hole takes out of a ball, m³: π·r²·wall + two domes where it goes right through,
   * else one dome, the cylinder to its depth and the drill's 118° point (geometry).
   */
  public double holeVolume_m3(OptionalDouble depth_m) {
    double r = bore.diameter_m() / 2;
    double dome = Math.PI * dome_m() * dome_m() * (1.5 * diameter_m.nominal() - dome_m()) / 3;
    double face = Math.PI * r * r;
    if (depth_m.isEmpty()) {
      return face * wall_m() + 2 * dome;
    }
    return dome + face * (depth_m.getAsDouble() - dome_m()) + face * point_m() / 3;
  }

  /** Mass of a blank, kg: ρ·π·D³/6. */
  public Interval blank_kg() {
    return diameter_m.rising(d -> Math.PI * d * d * d / 6).times(metal.density_kg_m3());
  }

  /** Mass of a drilled ball, kg. */
  public Interval drilled_kg(OptionalDouble depth_m) {
    double hole = holeVolume_m3(depth_m);
    return diameter_m.rising(d -> Math.PI * d * d * d / 6 - hole).times(metal.density_kg_m3());
  }

  /** Mass that a millimetre of the hole weighs, kg. */
  public double perMillimetre_kg() {
    double r = bore.diameter_m() / 2;
    return metal.density_kg_m3().nominal() * Math.PI * r * r * 1e-3;
  }

  /**
   * Heat capacity of a drilled and filled ball, J/K: the metal and, in the hole, the resistor and
   * metal-filled epoxy at 2.1 MJ/(m³ K) (2000 kg/m³ · 1050 J/(kg K); epoxy's specific heat:
   * Callister B.8; density of a filled one from memory).
   */
  public double heatCapacity_J_K(OptionalDouble depth_m, Sizes at) {
    double hole = holeVolume_m3(depth_m);
    double d = at.diameter_m();
    double metal_kg = (Math.PI * d * d * d / 6 - hole) * metal.density_kg_m3().nominal();
    return metal_kg * at.specificHeat_J_kgK() + 2.1e6 * hole;
  }

  /**
   * The two numbers of a ball that its tolerance moves.
   *
   * @param diameter_m diameter, m
   * @param specificHeat_J_kgK specific heat of the metal, J/(kg K)
   */
  public record Sizes(double diameter_m, double specificHeat_J_kgK) {}
}
