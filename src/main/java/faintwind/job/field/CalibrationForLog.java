package faintwind.job.field;

import faintwind.calibration.profile.ImportProfile;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The calibration by which a field log is read: the one in force when the log was recorded, not
 * when it is converted.
 *
 * @param file relative to the instrument's folder; empty where none was ever put in force
 * @param notes what a person should know of the choice
 */
public record CalibrationForLog(Optional<String> file, List<Problem> notes) {
  public CalibrationForLog {
    notes = List.copyOf(notes);
  }

  /**
   * Chooses.
   *
   * @param log a file that is there; where it carries no start, the calibration in force now counts
   * @param profile what the lines of a foreign log mean
   * @throws IOException where the log cannot be read
   */
  public static CalibrationForLog of(
      InstrumentState state, Path log, Optional<ImportProfile> profile, OffsetDateTime now)
      throws IOException {
    Optional<LogSpan> span = LogSpan.of(log, profile);
    Where where = Where.file(String.valueOf(log.getFileName()));
    if (span.isEmpty()) {
      Optional<String> file = state.calibrationInForce(now);
      return new CalibrationForLog(
          file,
          file.map(name -> Problem.warning("convert.log-no-date", where, name)).stream().toList());
    }
    Optional<String> first = state.calibrationInForce(span.get().from());
    Optional<String> last = state.calibrationInForce(span.get().to());
    if (first.isEmpty()) {
      return earliest(state, where);
    }
    return new CalibrationForLog(
        first,
        first.equals(last)
            ? List.of()
            : List.of(
                Problem.warning("convert.log-spans-two", where, first.get(), last.orElse(""))));
  }

  /** The first one that was ever in force, for a log from before it. */
  private static CalibrationForLog earliest(InstrumentState state, Where where) {
    Optional<Standing<CalibrationPutInForce>> earliest =
        state.standing(CalibrationPutInForce.class).stream()
            .min(Comparator.comparing(InstrumentState::countsFrom));
    return new CalibrationForLog(
        earliest.map(line -> line.event().file()),
        earliest
            .map(
                line ->
                    Problem.warning(
                        "convert.log-before",
                        where,
                        line.event().file(),
                        InstrumentState.countsFrom(line).toString()))
            .stream()
            .toList());
  }
}
