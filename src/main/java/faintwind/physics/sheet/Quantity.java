package faintwind.physics.sheet;

import faintwind.message.Problem;
import faintwind.physics.Interval;
import java.util.Optional;

/**
 * One computed quantity of a design.
 *
 * @param id which
 * @param value nominal with its band, in {@link QuantityId#unit()}
 * @param verdict what to make of it
 * @param reason why the verdict is not good, with the nearest thing that works; its words are in
 *     the message bundle
 */
public record Quantity(QuantityId id, Interval value, Verdict verdict, Optional<Problem> reason) {

  public static Quantity plain(QuantityId id, Interval value) {
    return new Quantity(id, value, Verdict.PLAIN, Optional.empty());
  }

  public static Quantity good(QuantityId id, Interval value) {
    return new Quantity(id, value, Verdict.GOOD, Optional.empty());
  }
}
