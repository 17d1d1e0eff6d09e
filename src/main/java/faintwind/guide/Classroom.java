package faintwind.guide;

import faintwind.record.Event.QuestionAnswered;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.util.Optional;

/**
 * Whether the build is one of a classroom, and who its teacher is: whoever first answered that it
 * is one. From then on only the teacher can answer otherwise; a pupil's answer leaves it a
 * classroom.
 */
final class Classroom {
  private static final String STEP = "choose-use";
  private static final String QUESTION = "group";
  private static final String YES = "yes";

  private Classroom() {}

  /** The teacher's name; empty where the build is not one of a classroom. */
  static Optional<String> teacher(InstrumentState state) {
    Optional<String> teacher = Optional.empty();
    for (Standing<QuestionAnswered> line : state.all(QuestionAnswered.class)) {
      if (!line.inStep(STEP) || !line.event().question().equals(QUESTION)) {
        continue;
      }
      boolean yes = line.event().choice().equals(YES);
      boolean undone = line.strike().filter(strike -> isSame(line.who(), strike.who())).isPresent();
      if (yes && teacher.isEmpty() && !undone) {
        teacher = Optional.of(line.who());
      } else if (!yes && teacher.filter(name -> isSame(name, line.who())).isPresent()) {
        teacher = Optional.empty();
      }
    }
    return teacher;
  }

  /** Names are compared without regard to case and to spaces at their ends. */
  static boolean isSame(String one, String other) {
    return one.strip().equalsIgnoreCase(other.strip());
  }
}
