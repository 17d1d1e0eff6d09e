package faintwind.physics.design;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One choice changed in a design file.
 *
 * @param group key of the group, such as {@code ball}
 * @param key key in the group, such as {@code diameter_mm}
 * @param text a text; empty where it is a number or taken out
 * @param number a number; empty where it is a text or taken out
 */
public record DesignChange(String group, String key, Optional<String> text, OptionalDouble number) {

  public static DesignChange text(String group, String key, String text) {
    return new DesignChange(group, key, Optional.of(text), OptionalDouble.empty());
  }

  public static DesignChange number(String group, String key, double number) {
    return new DesignChange(group, key, Optional.empty(), OptionalDouble.of(number));
  }

  /** Takes a key out, so that its default counts. */
  public static DesignChange without(String group, String key) {
    return new DesignChange(group, key, Optional.empty(), OptionalDouble.empty());
  }
}
