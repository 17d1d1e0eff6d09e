package faintwind.guide.checklist;

import faintwind.message.NumberText;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A class of meter: what it can show, and how wrong it may be.
 *
 * @param id file name without its ending
 * @param name in words
 * @param overRange how its display says that a value is beyond the range, in words
 * @param picksRange whether it goes to its largest range by itself before it shows over range; one
 *     that is switched by hand may stand on any
 * @param ranges of all its units
 * @param sources where the numbers come from
 */
public record MeterClass(
    String id,
    String name,
    String overRange,
    boolean picksRange,
    List<MeterRange> ranges,
    List<String> sources) {
  private static final List<String> BASE_UNITS = List.of("Ω", "V", "A");

  public MeterClass {
    ranges = List.copyOf(ranges);
    sources = List.copyOf(sources);
  }

  /**
   * Half-width of what a reading may be wrong by on the smallest range that shows it; empty where
   * the meter does not measure such a unit or the value is beyond its largest range.
   *
   * @param value the reading, in {@code unit}
   * @param unit a symbol of resistance, voltage or current, such as MΩ
   */
  public OptionalDouble halfWidth(double value, String unit) {
    Optional<String> base = base(unit);
    if (base.isEmpty()) {
      return OptionalDouble.empty();
    }
    double inBase = NumberText.convert(value, unit, base.get());
    return range(inBase, base.get())
        .map(r -> NumberText.convert(r.halfWidth(inBase), base.get(), unit))
        .map(OptionalDouble::of)
        .orElseGet(OptionalDouble::empty);
  }

  /** The largest value it shows, in that unit; empty where it does not measure it. */
  public OptionalDouble top(String unit) {
    Optional<String> base = base(unit);
    return base.isEmpty()
        ? OptionalDouble.empty()
        : ranges.stream()
            .filter(r -> r.unit().equals(base.get()))
            .mapToDouble(r -> NumberText.convert(r.top(), r.unit(), unit))
            .max();
  }

  /** The smallest range that shows a value; empty where it is over range. */
  public Optional<MeterRange> range(double value, String baseUnit) {
    return ranges.stream()
        .filter(r -> r.unit().equals(baseUnit) && Math.abs(value) <= r.top())
        .min(Comparator.comparingDouble(MeterRange::top));
  }

  private static Optional<String> base(String unit) {
    return BASE_UNITS.stream().filter(b -> NumberText.measureTheSame(b, unit)).findFirst();
  }
}
