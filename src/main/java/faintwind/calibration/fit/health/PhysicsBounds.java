package faintwind.calibration.fit.health;

/**
 * What a heated ball in air can be, all bounds in one place. Outside them a formula is not
 * believed, however well it follows the recordings.
 *
 * <p>Multipliers of the published correlations: Whitaker (1972) for forced and Churchill (1983) for
 * natural convection are good to ±12 % where they are compared with data for balls in air (design
 * value of this program); the published ones differ from each other by about as much. A fit tells
 * natural convection from the leads to a tenth only, so that the ratio found of sound made-up
 * builds lies between 0.72 and 1.3. The bounds are own choices that leave room beyond both. A ball
 * of another diameter D than the formula's nominal 12.7 mm brings D^0.54 to the forced and D^0.75
 * to the natural multiplier; 6 to 26 mm are allowed for where the diameter is not on record.
 */
public final class PhysicsBounds {
  /**
   * Exponent of the diameter in the forced multiplier: that of Re in Whitaker's form near Re 300.
   */
  public static final double FORCED_BY_DIAMETER = 0.54;

  /**
   * A range of allowed values.
   *
   * @param low least
   * @param high most
   */
  public record Range(double low, double high) {
    /** Whether a value is inside. */
    public boolean has(double value) {
      return value >= low && value <= high;
    }
  }

  /** Forced over natural multiplier: both rest on the same conduction, so it cancels. */
  public static final Range RATIO = new Range(0.7, 1.45);

  /** Its standard uncertainty from the correlations: 6 % each (logarithm). */
  public static final double U_RATIO = 0.09;

  /** Inside the range, but so near its end that a slip by two explains it as well. */
  public static final Range RATIO_USUAL = new Range(0.8, 1.28);

  /** Forced multiplier where diameter and heat capacity are on record. */
  public static final Range FORCED_KNOWN = new Range(0.82, 1.3);

  /** The same where they are not: 6 to 26 mm. */
  public static final Range FORCED = new Range(0.55, 1.7);

  /** Natural multiplier where diameter and heat capacity are on record. */
  public static final Range NATURAL_KNOWN = new Range(0.65, 1.5);

  /** The same where they are not. */
  public static final Range NATURAL = new Range(0.45, 2);

  /**
   * Conduction 12 k/(ρ c D²), 1/s: from a copper ball of 26 mm to an aluminium one of 6 mm, and a
   * half more to both sides.
   */
  public static final Range CONDUCTION_1_S = new Range(9e-5, 6e-3);

  /** Largest share of leads in the loss in still air; thick copper ones take a third to a half. */
  public static final double MOST_LEADS = 0.75;

  private PhysicsBounds() {}
}
