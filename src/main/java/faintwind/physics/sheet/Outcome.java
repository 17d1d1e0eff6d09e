package faintwind.physics.sheet;

import faintwind.message.Problem;
import faintwind.physics.Interval;
import java.util.Optional;

/**
 * One computed quantity of a design.
 *
 * @param id which
 * @param value nominal with its band, in {@link OutcomeId#unit()}
 * @param verdict what to make of it
 * @param reason why the verdict is not good, with the nearest thing that works; its words are in
 *     the message bundle
 */
public record Outcome(
    OutcomeId id, Interval value, DesignVerdict verdict, Optional<Problem> reason) {

  public static Outcome plain(OutcomeId id, Interval value) {
    return new Outcome(id, value, DesignVerdict.PLAIN, Optional.empty());
  }

  /** The same for a number without a band. */
  public static Outcome plain(OutcomeId id, double value) {
    return plain(id, Interval.exact(value));
  }

  public static Outcome good(OutcomeId id, Interval value) {
    return new Outcome(id, value, DesignVerdict.GOOD, Optional.empty());
  }
}
