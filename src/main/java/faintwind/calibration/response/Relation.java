package faintwind.calibration.response;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One formula of a chain that anybody can type in: numbers, names, + − * / ^, parentheses, and the
 * functions exp, ln (natural) and max. It uses inputs, parameters, constants, and names that stand
 * above it.
 *
 * @param name what it gives
 * @param unit unit of that
 * @param start first value of a name that its own formula improves; empty for a plain formula
 * @param repeat how often such a formula is worked out; empty for a plain formula
 */
public record Relation(
    String name, String unit, String formula, Optional<String> start, OptionalInt repeat) {
  /** Newton's method of these formulas gains digits twofold each time: enough for sixteen. */
  private static final int ROUNDS = 20;

  static Relation plain(String name, String unit, String formula) {
    return new Relation(name, unit, formula, Optional.empty(), OptionalInt.empty());
  }

  static Relation improving(String name, String unit, String start, String formula) {
    return new Relation(name, unit, formula, Optional.of(start), OptionalInt.of(ROUNDS));
  }
}
