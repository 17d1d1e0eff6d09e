package faintwind.physics.part;

/**
 * A kind of logger or meter, as far as a design needs it.
 *
 * @param label id, name, source
 * @param low_V lower end of its input range, V
 * @param high_V upper end of its input range, V
 * @param bits of its converter over the whole range
 * @param noise_V standard deviation of its readings, V
 * @param offset_V largest offset stated for it, V
 */
public record LoggerProfile(
    Label label, double low_V, double high_V, int bits, double noise_V, double offset_V) {
  private static final String OWN = "own";

  /** One that no file describes. */
  public static Label own(String name) {
    return new Label(OWN, name, "as entered in the design");
  }

  /** Whether a person described it, in place of a file. */
  public boolean isOwn() {
    return label.id().equals(OWN);
  }

  /** One step of the converter, V: range/2^bits. */
  public double step_V() {
    return (high_V - low_V) / Math.pow(2, bits);
  }

  /**
   * Standard deviation of one reading, V: noise and the rounding to steps, √(noise² + step²/12)
   * (JCGM 100:2008, 4.3.7).
   */
  public double u_V() {
    double rounding = step_V() / Math.sqrt(12);
    return Math.hypot(noise_V, rounding);
  }
}
