package faintwind.physics;

import faintwind.message.Field;

/**
 * The state of the air as files and the command line give it: a number in its usual unit, within
 * the bounds of {@link AirState}.
 */
@SuppressWarnings("ImmutableEnumChecker") // its field is a record without state
public enum AirField {
  TEMPERATURE(Field.number("air_C", -73, 126), 1, Constants.ZERO_C_K),
  PRESSURE(Field.number("pressure_hPa", 300, 1200), 100, 0),
  HUMIDITY(Field.number("rh_pct", 0, 100), 0.01, 0);

  private final Field field;
  private final double scale;
  private final double shift;

  AirField(Field field, double scale, double shift) {
    this.field = field;
    this.scale = scale;
    this.shift = shift;
  }

  public Field field() {
    return field;
  }

  /** A number of the field in SI. */
  public double si(double value) {
    return value * scale + shift;
  }
}
