package faintwind.calibration.profile;

import java.util.OptionalDouble;

/**
 * Follows a counter over its wrap: of all values that differ by whole turns the one nearest to the
 * last. Steps of half a turn or more cannot be told from steps the other way. For one column of one
 * recording.
 */
final class Unwrap {
  private final double turn;
  private OptionalDouble last = OptionalDouble.empty();

  Unwrap(double turn) {
    this.turn = turn;
  }

  double next(double counter) {
    double value = counter;
    if (last.isPresent()) {
      value += turn * Math.rint((last.getAsDouble() - counter) / turn);
    }
    last = OptionalDouble.of(value);
    return value;
  }
}
