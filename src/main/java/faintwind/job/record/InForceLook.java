package faintwind.job.record;

import faintwind.calibration.Calibration;
import faintwind.files.Sha256;
import faintwind.files.calibration.CalibrationFile;
import faintwind.guide.InForceGate;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.Attached;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.Waived;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What stands before a calibration of an instrument counts, and from when it does. */
public final class InForceLook {
  private static final Set<FileRole> RUNS =
      Set.of(FileRole.RUN, FileRole.RUNS_TABLE, FileRole.CHAIN);

  private InForceLook() {}

  /** The events, each calibration among them in force since it was measured, or why not. */
  static Checked<List<Event>> gated(InstrumentView view, List<? extends Event> events)
      throws IOException {
    List<Event> judged = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof CalibrationPutInForce wanted) {
        List<Problem> altered = alteredRuns(view);
        Checked<CalibrationPutInForce> answer =
            altered.isEmpty()
                ? read(view, wanted.file()).then(read -> event(view, wanted, read))
                : Checked.refused(altered);
        if (!(answer instanceof Checked.Ok<CalibrationPutInForce> ok)) {
          return Checked.refused(answer.problems());
        }
        judged.add(ok.value());
      } else {
        judged.add(event);
      }
    }
    return Checked.ok(judged);
  }

  private static Checked<CalibrationPutInForce> event(
      InstrumentView view, CalibrationPutInForce wanted, Calibration calibration) {
    List<Problem> reasons = InForceGate.reasons(view.state(), wanted.file(), calibration);
    OffsetDateTime from = wanted.from().orElse(calibration.origin().validFrom());
    return reasons.isEmpty()
        ? Checked.ok(new CalibrationPutInForce(wanted.file(), Optional.of(from)))
        : Checked.refused(reasons);
  }

  /**
   * The entries that put one in force that does not meet the build: why it counts all the same, and
   * since when.
   */
  static Checked<List<Event>> explained(InstrumentView view, String file, String reason, String who)
      throws IOException {
    List<Problem> refusals = new ArrayList<>(InForceGate.refusals(view.state(), reason, who));
    refusals.addAll(alteredRuns(view));
    if (!refusals.isEmpty()) {
      return Checked.refused(refusals);
    }
    return read(view, file)
        .then(
            calibration ->
                InForceGate.isRehearsal(view.state(), calibration)
                    ? Checked.refused(Problem.error("calibration.rehearsal", Where.file(file), ""))
                    : Checked.ok(
                        List.of(
                            new Waived(InForceGate.EXPLAINED + file, reason.strip()),
                            new CalibrationPutInForce(
                                file, Optional.of(calibration.origin().validFrom())))));
  }

  /** Runs that are not what was entered: what was made of them shows nothing. */
  private static List<Problem> alteredRuns(InstrumentView view) throws IOException {
    List<Problem> altered = new ArrayList<>();
    for (Standing<FileAdded> line : view.state().standing(FileAdded.class)) {
      Path file = view.path().resolve(line.event().file());
      if (RUNS.contains(line.event().kind()) && Files.isRegularFile(file)) {
        EntryRules.altered(view, new Attached(line.event().file(), Sha256.of(file)))
            .filter(problem -> !altered.contains(problem))
            .ifPresent(altered::add);
      }
    }
    return altered;
  }

  private static Checked<Calibration> read(InstrumentView view, String file) throws IOException {
    return CalibrationFile.read(view.path().resolve(file), file);
  }
}
