package faintwind.record;

import faintwind.record.Event.QuestionAnswered;
import java.util.Collection;
import java.util.Optional;

/**
 * Whether the build is one of a classroom, and who its teacher is: whoever first answered that it
 * is one. From then on only the teacher can answer otherwise; a pupil's answer leaves it a
 * classroom.
 */
public final class Classroom {
  private static final String STEP = "choose-use";
  private static final String QUESTION = "group";
  private static final String YES = "yes";

  private Classroom() {}

  /** The teacher's name by the lines of a journal; empty where it is not one of a classroom. */
  static Optional<String> teacher(Collection<? extends Standing<? extends Event>> lines) {
    Optional<String> teacher = Optional.empty();
    for (Standing<? extends Event> line : lines) {
      if (!line.inStep(STEP)
          || !(line.event() instanceof QuestionAnswered answer)
          || !answer.question().equals(QUESTION)) {
        continue;
      }
      boolean yes = answer.choice().equals(YES);
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
  public static boolean isSame(String one, String other) {
    return one.strip().equalsIgnoreCase(other.strip());
  }
}
