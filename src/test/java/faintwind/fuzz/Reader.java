package faintwind.fuzz;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.SignalChain;
import faintwind.files.air.PlacesTable;
import faintwind.files.air.PointsTable;
import faintwind.files.air.SpeedsFile;
import faintwind.files.asset.Library;
import faintwind.files.asset.ProfileFile;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.checklist.ChecklistFiles;
import faintwind.files.design.DesignFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.instrument.UnpackFolder;
import faintwind.files.plan.PlanFile;
import faintwind.files.run.ChainFile;
import faintwind.files.run.LogReader;
import faintwind.files.run.RunFile;
import faintwind.files.run.RunsTable;
import faintwind.files.table.FirstLines;
import faintwind.job.record.CheckPath;
import faintwind.job.record.DecodedPhoto;
import faintwind.job.turntable.FindTurns;
import faintwind.message.Checked;
import faintwind.physics.part.Catalogue;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Every reader of what comes from outside.
 *
 * <p>{@code file}: its name in the folder it is read from; {@code weight}: how often it gets an
 * input, so that slow readers do not eat the time of the others.
 */
@SuppressWarnings("ImmutableEnumChecker") // a function without a state
enum Reader {
  RUNS_TABLE("runs.csv", 200, RunsTable::read),
  RUNS_ANYWHERE("runs.csv", 50, p -> RunsTable.readAnywhere(p, Optional.empty())),
  RUN_FILE("run.csv", 300, p -> RunFile.read(p, "run", SignalChain.Input.DIFFERENCE_K)),
  LOG("log.csv", 400, p -> log(p, Optional.empty())),
  FOREIGN_LOG("foreign.csv", 100, p -> log(p, Optional.of(Shipped.PROFILE))),
  SHEET_XLSX("log.xlsx", 20, p -> FirstLines.of(p, 1000)),
  SHEET_ODS("log.ods", 30, p -> FirstLines.of(p, 1000)),
  FIRST_LINES("lines.txt", 300, p -> FirstLines.of(p, 20)),
  CHAIN("chain.json", 200, p -> ChainFile.read(p, "chain")),
  CALIBRATION("cal.json", 5, p -> CalibrationFile.read(p, "cal")),
  DESIGN("design.json", 30, p -> DesignFile.read(p, Shipped.PARTS)),
  PLAN("plan.json", 50, p -> PlanFile.read(p, "plan")),
  PROFILE("profile.json", 40, p -> ProfileFile.read(p, "profile")),
  JOURNAL("journal.jsonl", 100, p -> new InstrumentFolder(parent(p)).open()),
  INSTRUMENT("instrument.json", 100, p -> new InstrumentFolder(parent(p)).open()),
  CHECKLIST("own/02-make/drill-heated.json", 1, p -> checklist(parent(parent(p)))),
  WAV("sound.wav", 20, p -> FindTurns.in(p, OptionalDouble.empty(), 1)),
  POINTS("points.csv", 200, PointsTable::read),
  PLACES("places.csv", 200, PlacesTable::read),
  SPEEDS("speeds.csv", 200, SpeedsFile::read),
  PNG("photo.png", 150, Reader::photo),
  JPEG("photo.jpg", 60, Reader::photo),
  ARCHIVE("archive.zip", 10, p -> UnpackFolder.read(p, parent(p))),
  CHECK_DESIGN("some.json", 2, path -> CheckPath.run(path, Locale.ENGLISH)),
  CHECK_TABLE("any.csv", 100, path -> CheckPath.run(path, Locale.ENGLISH));

  /** What is read. */
  @FunctionalInterface
  interface Reading {
    Object of(Path file) throws IOException;
  }

  /** What the readers need beside the file. */
  private static final class Shipped {
    static final Catalogue PARTS = parts();
    static final ImportProfile PROFILE = profile();

    private static Catalogue parts() {
      try {
        return Library.shipped();
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }

    private static ImportProfile profile() {
      try {
        Path file = Path.of("assets/profiles/date-and-time-tabs.json");
        return ProfileFile.read(file, "profile")
            .fold(
                (value, notes) -> value,
                problems -> {
                  throw new AssertionError(problems);
                });
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  final String file;
  final int weight;
  private final Reading reading;

  Reader(String file, int weight, Reading reading) {
    this.file = file;
    this.weight = weight;
    this.reading = reading;
  }

  Object read(Path path) throws IOException {
    return reading.of(path);
  }

  private static Path parent(Path path) {
    Path parent = path.getParent();
    if (parent == null) {
      throw new IllegalArgumentException(path.toString());
    }
    return parent;
  }

  private static Object log(Path path, Optional<ImportProfile> profile) throws IOException {
    Checked<LogReader> opened =
        LogReader.open(
            new BufferedInputStream(Files.newInputStream(path)),
            "log",
            SignalChain.Input.DIFFERENCE_K,
            profile);
    if (opened instanceof Checked.Ok<LogReader> ok) {
      try (LogReader rows = ok.value()) {
        while (rows.next().isPresent()) {
          // every row is read
        }
      }
    }
    return opened;
  }

  private static Object checklist(Path own) throws IOException {
    return ChecklistFiles.read(List.of(own, Path.of("checklists/standard")), Locale.ENGLISH);
  }

  private static Object photo(Path path) throws IOException {
    Object kept = new InstrumentFolder(parent(path)).keepPhoto(path, "");
    return List.of(kept, DecodedPhoto.readable(path));
  }
}
