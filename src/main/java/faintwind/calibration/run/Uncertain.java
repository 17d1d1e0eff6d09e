package faintwind.calibration.run;

import java.util.OptionalDouble;

/**
 * A measured value and its standard uncertainty where one was stated, both in the same unit.
 *
 * @param value the value
 * @param u standard uncertainty, not negative; empty where none was stated
 */
public record Uncertain(double value, OptionalDouble u) {

  public static Uncertain of(double value, double u) {
    return new Uncertain(value, OptionalDouble.of(u));
  }

  public static Uncertain of(double value) {
    return new Uncertain(value, OptionalDouble.empty());
  }
}
