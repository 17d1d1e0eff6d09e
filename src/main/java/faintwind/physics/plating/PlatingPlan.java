package faintwind.physics.plating;

/**
 * How the balls are plated, where they are.
 *
 * @param by who does it
 * @param nickel nickel layer
 * @param gold gold layer; no thickness where there is none
 * @param room_m3 volume of the room, m³
 */
public record PlatingPlan(By by, Layer nickel, Layer gold, double room_m3) {
  /** Where a design says nothing: usual layers and current densities, common practice. */
  public static final PlatingPlan USUAL =
      new PlatingPlan(By.PLATER, new Layer(5e-6, 100), new Layer(0.5e-6, 30), 30);

  /** Who does the plating. */
  public enum By {
    /** A licensed plater: the default. */
    PLATER,
    /** At home, after every caution is acknowledged; never with a cyanide bath. */
    HOME
  }

  /**
   * One layer.
   *
   * @param thickness_m thickness, m
   * @param current_A_m2 current density, A/m²
   */
  public record Layer(double thickness_m, double current_A_m2) {}
}
