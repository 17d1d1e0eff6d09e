package faintwind.calibration.run;

import java.util.List;
import java.util.Map;

/**
 * What the other instruments of a class say of what this one shares with them: for an unknown of
 * the fit, by its name, the value expected and its standard uncertainty. Both are those of the
 * logarithm where the unknown is positive by nature.
 *
 * @param expected by name
 * @param ties what is known of two unknowns at once
 */
public record ClassKnown(Map<String, Uncertain> expected, List<Tie> ties) {
  /** There are no others. */
  public static final ClassKnown NOTHING = new ClassKnown(Map.of(), List.of());

  /**
   * What is known of two unknowns at once.
   *
   * @param one name of an unknown
   * @param other name of another, or of the same
   * @param information the element of the inverse of the covariance of all; of an unknown with
   *     itself, what is more than 1/u² of it alone
   */
  public record Tie(String one, String other, double information) {}

  public ClassKnown {
    expected = Map.copyOf(expected);
    ties = List.copyOf(ties);
  }
}
