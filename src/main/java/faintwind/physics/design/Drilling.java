package faintwind.physics.design;

import java.util.OptionalDouble;

/**
 * How one hole is drilled from a flat that is as wide as the hole (geometry). Such a flat takes the
 * dome off the ball that the drill would take anyway, so it changes no mass.
 *
 * @param fromFlat_m from the flat to the end of the full diameter, m; to the far side where the
 *     hole goes right through
 * @param travel_m how far the drill's tip goes down from where it first touches the flat, m
 * @param pecks how often it goes in and out
 */
public record Drilling(double fromFlat_m, double travel_m, int pecks) {
  /** Depth of a peck in drill diameters: common practice, no source. */
  public static final double DEEPEST_PECK = 1.0;

  /**
   * The hole of one ball.
   *
   * @param depth_m depth at full diameter from the ball's outline, m; empty for right through
   */
  public static Drilling of(BallDesign ball, OptionalDouble depth_m) {
    double fromFlat = ball.length_m(depth_m) - ball.dome_m();
    double travel = fromFlat + ball.point_m();
    double peck = DEEPEST_PECK * ball.bore().diameter_m();
    return new Drilling(fromFlat, travel, (int) Math.ceil(travel / peck - 1e-9));
  }

  /**
   * What a wrong mass means as a depth, m: (computed − measured)/(mass a metre of hole). Positive:
   * as if the hole were that much too deep; negative: too short.
   */
  public static double extraDepth_m(BallDesign ball, OptionalDouble depth_m, double measured_kg) {
    return (ball.drilled_kg(depth_m).nominal() - measured_kg) / (ball.perMillimetre_kg() * 1e3);
  }

  /**
   * The same as a diameter of the hole, m, at the depth of the design: r² grows by (computed −
   * measured)/(ρ·π·length). Empty where no hole of that length explains it.
   */
  public static OptionalDouble asDiameter_m(
      BallDesign ball, OptionalDouble depth_m, double measured_kg) {
    double missing_kg = ball.drilled_kg(depth_m).nominal() - measured_kg;
    double length = ball.length_m(depth_m);
    double rho = ball.metal().density_kg_m3().nominal();
    double r = ball.bore().diameter_m() / 2;
    double square = r * r + missing_kg / (rho * Math.PI * length);
    return square > 0 ? OptionalDouble.of(2 * Math.sqrt(square)) : OptionalDouble.empty();
  }
}
