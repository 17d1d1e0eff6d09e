package faintwind.physics;

import java.util.function.DoubleUnaryOperator;

/**
 * A value with the band that its tolerances leave: low ≤ nominal ≤ high. Sums and products are
 * exact interval arithmetic (worst case: every part at its own edge); where the same part stands on
 * both sides the band is wider than need be, so a formula is written with each part once.
 *
 * @param low lower edge
 * @param nominal the value with every part at its nominal
 * @param high upper edge
 */
public record Interval(double low, double nominal, double high) {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException where not low ≤ nominal ≤ high
   */
  public Interval {
    if (!(low <= nominal && nominal <= high)) {
      throw new IllegalArgumentException("interval " + low + ", " + nominal + ", " + high);
    }
  }

  public static Interval exact(double value) {
    return new Interval(value, value, value);
  }

  /** Nominal ± a share of it, such as 0.05. */
  public static Interval share(double nominal, double share) {
    double half = Math.abs(nominal) * share;
    return new Interval(nominal - half, nominal, nominal + half);
  }

  /** A range without a stated nominal: its middle is taken. */
  public static Interval range(double low, double high) {
    return new Interval(low, 0.5 * (low + high), high);
  }

  public Interval plus(Interval other) {
    return new Interval(low + other.low, nominal + other.nominal, high + other.high);
  }

  public Interval minus(Interval other) {
    return new Interval(low - other.high, nominal - other.nominal, high - other.low);
  }

  /** The product. */
  public Interval times(Interval other) {
    double a = low * other.low;
    double b = low * other.high;
    double c = high * other.low;
    double d = high * other.high;
    return new Interval(
        Math.min(Math.min(a, b), Math.min(c, d)),
        nominal * other.nominal,
        Math.max(Math.max(a, b), Math.max(c, d)));
  }

  /**
   * The quotient.
   *
   * @throws IllegalArgumentException where the divisor's band reaches zero
   */
  public Interval over(Interval other) {
    if (other.low <= 0 && other.high >= 0) {
      throw new IllegalArgumentException("divisor from " + other.low + " to " + other.high);
    }
    return times(new Interval(1 / other.high, 1 / other.nominal, 1 / other.low));
  }

  public Interval times(double factor) {
    return times(exact(factor));
  }

  /** A rising function of each edge. */
  public Interval rising(DoubleUnaryOperator f) {
    return new Interval(f.applyAsDouble(low), f.applyAsDouble(nominal), f.applyAsDouble(high));
  }

  /** Half the width. */
  public double half() {
    return 0.5 * (high - low);
  }
}
