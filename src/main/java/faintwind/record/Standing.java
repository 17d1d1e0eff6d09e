package faintwind.record;

import faintwind.message.Messages;
import faintwind.message.Problem;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * An event as it stands after the whole journal was read: struck through, or in force.
 *
 * @param entry id of the entry that brought it; of the correction, where it replaced another
 * @param at when that entry was written
 * @param who wrote it
 * @param step the step it belongs to; a replacement belongs to the step of what it replaced
 * @param event what it says
 * @param replaces id of the entry it replaced
 * @param strike the correction that struck it through
 */
public record Standing<E extends Event>(
    String entry,
    OffsetDateTime at,
    String who,
    Optional<String> step,
    E event,
    Optional<String> replaces,
    Optional<Strike> strike) {
  /** Whose name stands at what the program does by itself. */
  static final String PROGRAM = "faintwind";

  /** Whether it is in force. */
  public boolean stands() {
    return strike.isEmpty();
  }

  /** Why it is void: it stands in the record and shows nothing of what it was to show. */
  public Optional<Problem> voidCause() {
    return strike.flatMap(Strike::cause);
  }

  /** The same where the event is of a kind. */
  @SuppressWarnings("unchecked") // nothing of it changes, and its event is of that kind
  <F extends Event> Optional<Standing<F>> of(Class<F> kind) {
    return kind.isInstance(event) ? Optional.of((Standing<F>) this) : Optional.empty();
  }

  /** Whether it belongs to that step. */
  public boolean inStep(String id) {
    return step.isPresent() && step.get().equals(id);
  }

  Standing<E> unstruck() {
    return new Standing<>(entry, at, who, step, event, replaces, Optional.empty());
  }

  Standing<E> struckBy(Strike by) {
    return new Standing<>(entry, at, who, step, event, replaces, Optional.of(by));
  }

  /**
   * Who struck it through, when and why.
   *
   * @param entry id of the correcting entry
   * @param at when
   * @param who struck it
   * @param why the reason given
   * @param cause why the program struck it, where no person did: the reading is void
   */
  public record Strike(
      String entry, OffsetDateTime at, String who, String why, Optional<Problem> cause) {

    /** The reason in words. */
    public String reason(Messages words) {
      return cause.map(words::sentence).orElse(why);
    }
  }
}
