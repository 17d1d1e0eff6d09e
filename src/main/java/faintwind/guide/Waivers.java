package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Classroom;
import faintwind.record.Event;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which waivers count. Each needs a name of at least two letters and a reason of at least two words
 * and ten letters. A reading on which heater power stands can be waived only where it was taken and
 * is doubtful, and after it was typed. In a classroom only the teacher waives a reading, whichever
 * it is. Own rule, no source.
 */
public final class Waivers {
  private Waivers() {}

  /** Whether a step has something of that name that may be gone on without at all. */
  public static boolean isWaivable(Step step, String what) {
    return step.reading(what).isPresent()
        || step.asks().clock().filter(c -> c.id().equals(what)).isPresent()
        || (what.equals("photo") && step.asks().photo().isPresent());
  }

  /** Whether it can be somebody's name. */
  public static boolean isName(String name) {
    return letters(name) >= OwnChoices.NAME_LETTERS;
  }

  /** Whether it can be a reason. */
  public static boolean isReason(String reason) {
    long words =
        List.of(reason.strip().split("\\s+", -1)).stream().filter(w -> letters(w) >= 2).count();
    long kinds =
        reason
            .codePoints()
            .filter(Character::isLetter)
            .map(Character::toLowerCase)
            .distinct()
            .count();
    return words >= OwnChoices.REASON_WORDS
        && letters(reason) >= OwnChoices.REASON_LETTERS
        && kinds >= OwnChoices.REASON_KINDS;
  }

  private static long letters(String text) {
    return text.codePoints().filter(Character::isLetter).count();
  }

  /** Whether heater power stands on a reading, so that it can be waived only where doubtful. */
  public static boolean isOfPower(Step step, Reading reading) {
    return PowerEvidence.isOfPower(step, reading);
  }

  /**
   * Why a waiver may not be written, all reasons at once; empty where it may.
   *
   * @param who in whose name it would stand
   */
  public static List<Problem> refusals(
      Checklist checklist, Step step, Waived waiver, String who, Situation situation) {
    List<Problem> problems = new ArrayList<>(form(step, waiver, who));
    Optional<Reading> reading = step.reading(waiver.what());
    reading
        .filter(one -> PowerEvidence.isOfPower(step, one))
        .ifPresent(
            one -> problems.addAll(ofPower(step, one, situation, situation.values(checklist))));
    reading
        .flatMap(one -> otherTeacher(situation.state(), who))
        .ifPresent(teacher -> problems.add(error("waiver.not-the-teacher", step, who, teacher)));
    return problems;
  }

  /** What is wrong with name and reason alone. */
  static List<Problem> form(Step step, Waived waiver, String who) {
    List<Problem> problems = new ArrayList<>();
    String what = step.reading(waiver.what()).map(Reading::label).orElse(waiver.what());
    if (!isName(who)) {
      problems.add(error("waiver.no-name", step, who, what));
    }
    if (!isReason(waiver.reason())) {
      problems.add(error("waiver.no-reason", step, waiver.reason(), what));
    }
    return problems;
  }

  private static List<Problem> ofPower(
      Step step, Reading reading, Situation situation, Map<String, Double> values) {
    List<Problem> problems = new ArrayList<>();
    Optional<ReadingVerdict> verdict =
        situation
            .state()
            .reading(step.id(), reading.id())
            .flatMap(line -> Verdicts.of(reading, line, situation, values))
            .map(Reading.Judgement::verdict);
    if (verdict.isEmpty()) {
      problems.add(error("waiver.not-taken", step, reading.label()));
    } else if (verdict.get() == ReadingVerdict.STOP) {
      problems.add(error("waiver.of-a-stop", step, reading.label()));
    }
    return problems;
  }

  /** The teacher of the classroom, where that is somebody else. */
  private static Optional<String> otherTeacher(InstrumentState state, String who) {
    return state.teacher().filter(teacher -> !Classroom.isSame(teacher, who));
  }

  /**
   * Whether something of a step is waived, so that it is missed no more.
   *
   * @param verdict of the reading; empty where it was not taken or cannot be judged, or is no
   *     reading
   */
  static boolean counts(
      Step step, String what, Optional<ReadingVerdict> verdict, Situation situation) {
    InstrumentState state = situation.state();
    Optional<Standing<Waived>> waiver =
        state.waiver(step.id(), what).filter(w -> form(step, w.event(), w.who()).isEmpty());
    Optional<Reading> reading = step.reading(what);
    if (waiver.isEmpty() || reading.isEmpty()) {
      return waiver.isPresent();
    }
    if (otherTeacher(state, waiver.get().who()).isPresent()) {
      return false;
    }
    if (!PowerEvidence.isOfPower(step, reading.get())) {
      return true;
    }
    boolean after =
        state
            .reading(step.id(), what)
            .filter(line -> isBefore(line, waiver.get(), state.lines()))
            .isPresent();
    return after && verdict.filter(ReadingVerdict.DOUBTFUL::equals).isPresent();
  }

  /** Whether one entry stands before another in the journal, whatever their clocks said. */
  static boolean isBefore(
      Standing<?> one, Standing<?> other, List<Standing<? extends Event>> lines) {
    for (Standing<? extends Event> line : lines) {
      if (line.entry().equals(one.entry())) {
        return true;
      }
      if (line.entry().equals(other.entry())) {
        return false;
      }
    }
    return false;
  }

  private static Problem error(String id, Step step, String found, String... details) {
    return Problem.error(id, Where.step(step.id()), found, details);
  }
}
