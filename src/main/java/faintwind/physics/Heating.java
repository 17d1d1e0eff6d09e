package faintwind.physics;

/**
 * Heat put into the two balls.
 *
 * @param heated_W heater power and whatever sun the heated ball takes up, W
 * @param reference_W what the reference ball takes up, W; 0 out of the sun
 */
public record Heating(double heated_W, double reference_W) {

  public static final Heating OFF = new Heating(0, 0);

  /** The heater alone. */
  public static Heating heater(double power_W) {
    return new Heating(power_W, 0);
  }
}
