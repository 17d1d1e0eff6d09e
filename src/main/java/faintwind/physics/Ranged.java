package faintwind.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * A value of a correlation, and every range of validity that was left to get it. The value is
 * always usable; whoever shows it also shows the ranges left.
 *
 * @param value the value, in the unit of the method that returned it
 * @param left ranges that were left; empty where the correlation is used as published
 */
public record Ranged(double value, List<RangeLeft> left) {

  public Ranged {
    left = List.copyOf(left);
  }

  public static Ranged inside(double value) {
    return new Ranged(value, List.of());
  }

  /** Whether the correlation was used within its published range. */
  public boolean isInside() {
    return left.isEmpty();
  }

  /** A value made from this one and another: the ranges left of both are kept. */
  public Ranged with(Ranged other, double combined) {
    List<RangeLeft> all = new ArrayList<>(left);
    all.addAll(other.left);
    return new Ranged(combined, all);
  }

  /**
   * One range that was left.
   *
   * @param correlation bundle key of the correlation's name, such as {@code range.whitaker}
   * @param quantity symbol of the quantity, such as {@code Re}
   * @param found its value
   * @param low lower edge of the published range
   * @param high upper edge of the published range
   */
  public record RangeLeft(
      String correlation, String quantity, double found, double low, double high) {}

  /** Collects the ranges left while a correlation is worked out. */
  static List<RangeLeft> check(
      String correlation, String quantity, double found, double low, double high) {
    return found >= low && found <= high
        ? List.of()
        : List.of(new RangeLeft(correlation, quantity, found, low, high));
  }
}
