package faintwind.calibration.profile;

import java.util.List;
import java.util.OptionalInt;

/**
 * Which column of a line: by its number from 1, or by its name in the header.
 *
 * @param number from 1; 0 for a named column
 * @param name as it stands in the header; empty for a numbered one
 */
public record ColumnRef(int number, String name) {
  public ColumnRef {
    if ((number > 0) == !name.isEmpty()) {
      throw new IllegalArgumentException(
          "number = " + number + ", name = " + name + "; allowed one of them");
    }
  }

  public static ColumnRef numbered(int number) {
    return new ColumnRef(number, "");
  }

  public static ColumnRef named(String name) {
    return new ColumnRef(0, name);
  }

  public boolean isNamed() {
    return number == 0;
  }

  /** Index from 0 in a line whose header has these names; empty where the name is not there. */
  OptionalInt index(List<String> names) {
    if (!isNamed()) {
      return OptionalInt.of(number - 1);
    }
    int at = names.indexOf(name);
    return at < 0 ? OptionalInt.empty() : OptionalInt.of(at);
  }

  /** As it is written in a profile. */
  public String text() {
    return isNamed() ? name : String.valueOf(number);
  }
}
