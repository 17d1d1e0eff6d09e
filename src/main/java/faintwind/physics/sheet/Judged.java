package faintwind.physics.sheet;

import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import faintwind.physics.Ranged;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Quantities with a verdict that has a reason. */
final class Judged {
  private Judged() {}

  /** Usable, with a reason to look at it. */
  static Outcome improve(OutcomeId id, Interval value, String reason, String... details) {
    Problem problem = Problem.warning(reason, place(id), details[0], rest(details));
    return new Outcome(id, value, DesignVerdict.IMPROVE, Optional.of(problem));
  }

  /** Not usable, with the reason. */
  static Outcome stop(OutcomeId id, Interval value, String reason, String... details) {
    Problem problem = Problem.error(reason, place(id), details[0], rest(details));
    return new Outcome(id, value, DesignVerdict.STOP, Optional.of(problem));
  }

  /** A plain number that rests on a correlation used outside its range says so. */
  static Outcome ranged(OutcomeId id, Interval value, List<Ranged.RangeLeft> left) {
    return within(Outcome.plain(id, value), left);
  }

  /** A quantity that needs no other reason says which published range it leaves. */
  static Outcome within(Outcome quantity, List<Ranged.RangeLeft> left) {
    if (quantity.reason().isPresent()) {
      return quantity;
    }
    Optional<Problem> reason =
        left.stream()
            .findFirst()
            .map(
                r ->
                    Problem.warning(
                        r.correlation(),
                        place(quantity.id()),
                        r.quantity(),
                        Numerals.digits(r.found()),
                        Numerals.digits(r.low()),
                        Numerals.digits(r.high())));
    return new Outcome(quantity.id(), quantity.value(), quantity.verdict(), reason);
  }

  private static Where place(OutcomeId id) {
    return Where.NOWHERE.atColumn(id.id());
  }

  private static String[] rest(String[] details) {
    return Arrays.copyOfRange(details, 1, details.length);
  }
}
