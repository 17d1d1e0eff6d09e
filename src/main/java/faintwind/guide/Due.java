package faintwind.guide;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Rechecked;
import faintwind.record.Event.Repaired;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When an instrument is to be calibrated again: a year after its measurement (common practice, no
 * source), at once after a repair, at once where the jar check no longer shows what the calibration
 * says it must, and at once where a check at the arm differs from it.
 *
 * @param at when
 * @param cause why then
 */
public record Due(OffsetDateTime at, Cause cause) {
  /** The step in which the level at rest is checked. */
  public static final String JAR_STEP = "jar-check";

  /** Its reading. */
  public static final String JAR_READING = "jar-delta";

  /** Why it is due. */
  public enum Cause {
    TIME("due.time"),
    REPAIR("due.repair"),
    DRIFT("due.drift"),
    RECHECK("due.recheck");

    private final String key;

    Cause(String key) {
      this.key = key;
    }

    /** Bundle key of its words. */
    public String key() {
      return key;
    }
  }

  /** A year after the measurement, where nothing is known of what happened since. */
  public static Due byTime(OffsetDateTime measured) {
    return new Due(measured.plusYears(OwnChoices.YEARS), Cause.TIME);
  }

  /** Whether it has come. */
  public boolean isPast(OffsetDateTime now) {
    return !at.isAfter(now);
  }

  /**
   * The earliest of the four.
   *
   * @param measured since when the calibration in force counts
   */
  public static Due of(Checklist checklist, Situation situation, OffsetDateTime measured) {
    Stream<Due> early =
        Stream.of(
                repairs(situation.state(), measured),
                drift(checklist, situation, measured).stream(),
                recheck(situation.state()).stream())
            .flatMap(due -> due);
    return Stream.concat(early, Stream.of(byTime(measured)))
        .min(Comparator.comparing(Due::at))
        .orElseThrow();
  }

  /** When the calibration in force is due; empty where none ever was. */
  public static Optional<Due> ofInForce(Checklist checklist, Situation situation) {
    return situation
        .state()
        .last(CalibrationPutInForce.class)
        .map(line -> of(checklist, situation, InstrumentState.countsFrom(line)));
  }

  private static Stream<Due> repairs(InstrumentState state, OffsetDateTime measured) {
    return state.standing(Repaired.class).stream()
        .map(Standing::at)
        .filter(at -> at.isAfter(measured))
        .map(at -> new Due(at, Cause.REPAIR));
  }

  /** The last check of the calibration in force, where it differed. */
  private static Optional<Due> recheck(InstrumentState state) {
    Optional<String> inForce = state.last(CalibrationPutInForce.class).map(l -> l.event().file());
    return state
        .last(Rechecked.class, l -> inForce.filter(l.event().calibration()::equals).isPresent())
        .filter(line -> !line.event().agrees())
        .map(line -> new Due(line.at(), Cause.RECHECK));
  }

  private static Optional<Due> drift(
      Checklist checklist, Situation situation, OffsetDateTime measured) {
    Optional<Step> step = checklist.step(JAR_STEP);
    Optional<Reading> reading = step.flatMap(s -> s.reading(JAR_READING));
    Optional<Standing<ReadingEntered>> line =
        situation.state().reading(JAR_STEP, JAR_READING).filter(l -> l.at().isAfter(measured));
    if (reading.isEmpty() || line.isEmpty()) {
      return Optional.empty();
    }
    return Verdicts.of(checklist, step.orElseThrow(), reading.get(), situation)
        .filter(judged -> judged.verdict() != ReadingVerdict.GOOD)
        .map(judged -> new Due(line.get().at(), Cause.DRIFT));
  }
}
