package faintwind.message;

import java.util.OptionalDouble;

/**
 * A quantity that a person typed, understood: what {@link NumberText} makes of {@code 420k} or
 * {@code > 20 M}.
 *
 * @param value in {@code unit}; for {@link Bound#OVER_RANGE} positive infinity, otherwise finite
 * @param unit symbol of the unit the value is in, such as {@code MΩ}; empty for a plain number
 * @param bound whether the value is the quantity itself or a limit to it
 * @param tolerance half-width that was typed after ±, in {@code unit}
 */
public record Amount(double value, String unit, Bound bound, OptionalDouble tolerance) {

  public Amount {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("value is not a number");
    }
    if (Double.isInfinite(value) != (bound == Bound.OVER_RANGE)) {
      throw new IllegalArgumentException("value = " + value + " with bound " + bound);
    }
  }

  /** What the number says of the quantity. */
  public enum Bound {
    EXACT,
    /** Typed as {@code > 20 M}. */
    AT_LEAST,
    /** Typed as {@code < 1}. */
    AT_MOST,
    /** The meter shows that the quantity is beyond its range: an open circuit. */
    OVER_RANGE
  }

  public static Amount exact(double value, String unit) {
    return new Amount(value, unit, Bound.EXACT, OptionalDouble.empty());
  }

  public static Amount overRange(String unit) {
    return new Amount(Double.POSITIVE_INFINITY, unit, Bound.OVER_RANGE, OptionalDouble.empty());
  }
}
