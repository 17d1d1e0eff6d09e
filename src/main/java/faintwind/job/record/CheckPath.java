package faintwind.job.record;

import faintwind.calibration.run.SignalChain;
import faintwind.files.arm.ArmFile;
import faintwind.files.asset.ProfileFile;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.plan.PlanFile;
import faintwind.files.run.ChainFile;
import faintwind.files.run.FileKind;
import faintwind.files.run.RunFile;
import faintwind.files.run.RunsTable;
import faintwind.guide.Contradictions;
import faintwind.guide.Due;
import faintwind.guide.Situation;
import faintwind.job.design.KeptDesigns;
import faintwind.job.design.Size;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.CalibrationPutInForce;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds out what a file or folder is and lists everything that is wrong with it. */
public final class CheckPath {
  private CheckPath() {}

  /**
   * What was found.
   *
   * @param kind bundle key of what the path is
   * @param problems errors and warnings
   */
  public record Finding(String kind, List<Problem> problems) {
    public Finding {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Checks a path.
   *
   * @param language of what is said of an instrument's steps
   * @throws IOException where the disk or a permission fails; a path that is not there is a problem
   */
  public static Finding run(Path path, Locale language) throws IOException {
    String name = path.toString();
    if (!Files.exists(path)) {
      return new Finding(
          key(FileKind.UNKNOWN), List.of(Problem.error("file.missing", Where.file(name), name)));
    }
    FileKind kind = FileKind.of(path);
    return new Finding(key(kind), problems(kind, path, name, language).problems());
  }

  private static String key(FileKind kind) {
    return "check.kind." + kind.word();
  }

  private static Checked<InstrumentView> instrument(Path path, Locale language) throws IOException {
    KeptDesigns designs = KeptDesigns.withShippedParts();
    return InstrumentView.audited(path, designs::sheet, new KeptGuides(language))
        .then(
            view -> {
              List<Problem> all = new ArrayList<>(view.problems());
              OffsetDateTime now = OffsetDateTime.now(Clock.system(ZoneId.systemDefault()));
              all.addAll(contradictions(view, now));
              due(view, now).ifPresent(all::add);
              return all.stream().anyMatch(Problem::isError)
                  ? Checked.refused(all)
                  : Checked.ok(view, all);
            });
  }

  /** That the calibration in force is due for a cause on record; time alone is no fault. */
  private static Optional<Problem> due(InstrumentView view, OffsetDateTime now) {
    String file =
        view.state().last(CalibrationPutInForce.class).map(l -> l.event().file()).orElse("");
    return Due.ofInForce(view.checklist(), view.situation(now))
        .filter(due -> due.cause() != Due.Cause.TIME && due.isPast(now))
        .map(
            due ->
                Problem.warning(
                    due.cause().key().replace("due.", "due.now."),
                    Where.file(file),
                    file,
                    due.at().toString()));
  }

  /** A reading that says stop is one that was seen, even where it is void for going on. */
  private static List<Problem> contradictions(InstrumentView view, OffsetDateTime now) {
    Situation situation = view.situation(now);
    Situation typed =
        new Situation(situation.state().asTyped(), situation.designs(), now, situation.meters());
    List<Problem> all = new ArrayList<>(Contradictions.of(view.checklist(), situation));
    Contradictions.of(view.checklist(), typed).stream()
        .filter(problem -> problem.isError() && !all.contains(problem))
        .forEach(all::add);
    return all;
  }

  private static Checked<?> problems(FileKind kind, Path path, String name, Locale language)
      throws IOException {
    return switch (kind) {
      case ARM -> ArmFile.read(path);
      case CALIBRATION -> CalibrationFile.read(path, name);
      case CHAIN -> ChainFile.read(path, name);
      case DESIGN -> Size.run(path);
      case INSTRUMENT -> instrument(path, language);
      case PLAN -> PlanFile.read(path, name);
      case PROFILE -> ProfileFile.read(path, name);
      case RUNS_TABLE -> RunsTable.read(path);
      case RUN_FILE -> RunFile.read(path, name, SignalChain.Input.VOLTAGE);
      case UNKNOWN -> Checked.refused(Problem.error("check.unknown", Where.file(name), name));
    };
  }
}
