package faintwind.calibration.run;

import java.util.Map;

/**
 * What the other instruments of a class say of what this one shares with them: for an unknown of
 * the fit, by its name, the value expected and its standard uncertainty. Both are those of the
 * logarithm where the unknown is positive by nature.
 */
public record ClassKnown(Map<String, Uncertain> expected) {
  /** There are no others. */
  public static final ClassKnown NOTHING = new ClassKnown(Map.of());

  public ClassKnown {
    expected = Map.copyOf(expected);
  }
}
