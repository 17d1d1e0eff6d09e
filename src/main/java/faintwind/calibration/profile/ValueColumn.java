package faintwind.calibration.profile;

import java.util.OptionalDouble;

/**
 * One column that is used: value = scale · (number in the cell) + shift, in the unit.
 *
 * @param column which
 * @param meaning what it says
 * @param unit of the value
 * @param scale factor to the number in the cell, not 0
 * @param shift added after the factor
 * @param wrapsAt where a counter in the cell starts again at the bottom: the size of its whole turn
 * @param around text that stands around the number in the cell
 */
public record ValueColumn(
    ColumnRef column,
    Meaning meaning,
    ValueUnit unit,
    double scale,
    double shift,
    OptionalDouble wrapsAt,
    Around around) {

  /**
   * Text around a number, taken off where it is there.
   *
   * @param before such as {@code T=}
   * @param after such as {@code mV}
   */
  public record Around(String before, String after) {
    public static final Around NOTHING = new Around("", "");

    String strip(String cell) {
      String text = cell.strip();
      if (!before.isEmpty() && text.startsWith(before)) {
        text = text.substring(before.length()).strip();
      }
      if (!after.isEmpty() && text.endsWith(after)) {
        text = text.substring(0, text.length() - after.length()).strip();
      }
      return text;
    }
  }

  public ValueColumn {
    if (!Double.isFinite(scale) || scale == 0 || !Double.isFinite(shift)) {
      throw new IllegalArgumentException(
          "scale = " + scale + ", shift = " + shift + "; allowed any but a scale of 0");
    }
    if (!meaning.allows(unit)) {
      throw new IllegalArgumentException("unit = " + unit + ", not one for " + meaning);
    }
    if (wrapsAt.isPresent() && !(wrapsAt.getAsDouble() > 0)) {
      throw new IllegalArgumentException("wrapsAt = " + wrapsAt + ", allowed above 0");
    }
  }

  /** A named column whose numbers are taken as they are. */
  public static ValueColumn named(String name, Meaning meaning, ValueUnit unit) {
    return plain(ColumnRef.named(name), meaning, unit);
  }

  /** A column whose numbers are taken as they are. */
  public static ValueColumn plain(ColumnRef column, Meaning meaning, ValueUnit unit) {
    return new ValueColumn(column, meaning, unit, 1, 0, OptionalDouble.empty(), Around.NOTHING);
  }
}
