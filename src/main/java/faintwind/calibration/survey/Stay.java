package faintwind.calibration.survey;

import faintwind.calibration.field.SpeedSeries;
import faintwind.calibration.field.StretchMean;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds in a log when the instrument had settled at a place. It waits as long as the air there asks
 * for; then the means of the two halves of what is left must agree within their uncertainty, else
 * the first tenth of the stay is left out again and again, until half of the stay is used up.
 */
public final class Stay {
  private final SpeedSeries rows;
  private final Settling settling;
  private final StretchMean.How how;

  public Stay(SpeedSeries rows, Settling settling, StretchMean.How how) {
    this.rows = rows;
    this.settling = settling;
    this.how = how;
  }

  /** The stay at a place from one time of the log to another. */
  public Visit at(String place, double from_s, double to_s) {
    double wait_s = wait_s(from_s, to_s);
    double last_s = Math.max(wait_s, OwnChoices.LEFT_OUT_MOST * (to_s - from_s));
    Optional<Visit> found = Optional.empty();
    while (wait_s <= last_s && from_s + wait_s < to_s) {
      Optional<StretchMean> mean = StretchMean.of(rows, from_s + wait_s, to_s, how);
      boolean steady = mean.isPresent() && isSteady(from_s + wait_s, to_s);
      Visit visit = new Visit(place, mean, OptionalDouble.of(wait_s), steady);
      if (steady) {
        return visit;
      }
      found = found.isPresent() || mean.isEmpty() ? found : Optional.of(visit);
      wait_s += OwnChoices.LEFT_OUT_STEP * (to_s - from_s);
    }
    return found.orElse(
        new Visit(place, Optional.empty(), OptionalDouble.of(settling.atMost_s()), false));
  }

  /** The longer wait of still air where the end of the stay is no faster than the lowest speed. */
  private double wait_s(double from_s, double to_s) {
    double half_s = (from_s + to_s) / 2;
    boolean faint =
        StretchMean.of(rows, half_s, to_s, how).filter(m -> m.faintShare() < 0.5).isEmpty();
    return faint ? settling.atMost_s() : settling.moving_s();
  }

  private boolean isSteady(double from_s, double to_s) {
    double middle_s = (from_s + to_s) / 2;
    Optional<StretchMean> one = StretchMean.of(rows, from_s, middle_s, how);
    Optional<StretchMean> other = StretchMean.of(rows, middle_s, to_s, how);
    return one.isPresent() && other.isPresent() && !one.get().differs(other.get());
  }
}
