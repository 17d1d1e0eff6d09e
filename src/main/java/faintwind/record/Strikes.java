package faintwind.record;

import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.ChainBegun;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.LinesLost;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.RehearsalBegun;
import java.util.Collection;
import java.util.Optional;

/**
 * What no correction takes back: that a folder was begun, with its mark of made-up data and its
 * members; that it is for rehearsals; what the program noted of the journal itself; and in a
 * classroom, by anybody else, what the teacher entered, but for a reading: a slip in a number is
 * corrected by whoever sees it. Such a correction strikes nothing. Own rule, no source.
 */
public final class Strikes {
  private Strikes() {}

  /** Whether an event can be struck through at all, by whomever. */
  public static boolean isStrikable(Event event) {
    return !(event instanceof InstrumentCreated
        || event instanceof RehearsalBegun
        || event instanceof ChainBegun
        || event instanceof LinesLost);
  }

  /**
   * Why a person may not strike a line; empty where it may be struck.
   *
   * @param lines of the journal until then
   */
  public static Optional<Problem> refusal(
      Collection<Standing<? extends Event>> lines, Standing<? extends Event> line, String who) {
    if (!isStrikable(line.event())) {
      return Optional.of(Problem.error("strike.never", Where.NOWHERE, line.entry()));
    }
    if (Classroom.isSame(line.who(), who) || line.event() instanceof ReadingEntered) {
      return Optional.empty();
    }
    return Classroom.teacher(lines)
        .filter(teacher -> Classroom.isSame(teacher, line.who()))
        .map(
            teacher ->
                Problem.error("strike.of-the-teacher", Where.NOWHERE, line.entry(), teacher));
  }
}
