package faintwind.job.record;

import faintwind.calibration.Calibration;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.files.PhotoTurn;
import faintwind.files.Sha256;
import faintwind.files.asset.Library;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.design.DesignFile;
import faintwind.job.EnteredFile;
import faintwind.job.JobWatch;
import faintwind.job.PaperFile;
import faintwind.job.SoftwareVersion;
import faintwind.job.field.KeptLogs;
import faintwind.job.formula.FormulaRuns;
import faintwind.job.formula.KeepFormula;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.design.Use;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.log.BuildLog;
import faintwind.report.log.BuildLogContent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Writes the build log of an instrument folder, as HTML or as PDF by the target's ending. */
public final class WriteReport {
  /** Where an instrument's folder keeps its build log, relative to the folder. */
  public static final String KEPT_AS = "reports/build-log.html";

  private static final long WHOLE_PHOTO_BYTES = 1L << 20;

  private final Clock clock;
  private final Messages messages;

  public WriteReport(Clock clock, Messages messages) {
    this.clock = clock;
    this.messages = messages;
  }

  /**
   * Writes the log to its place in the instrument's own folder, {@link #KEPT_AS}; an earlier one is
   * replaced.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> keep(Path folder) throws IOException {
    Files.createDirectories(folder.resolve("reports"));
    return write(folder, folder.resolve(KEPT_AS));
  }

  /**
   * Writes the log, whole or not at all; one that comes to lie in the folder of an instrument is
   * entered there. A folder with problems is reported with them.
   *
   * @param folder of the instrument
   * @param target the log; {@code .pdf} gives PDF, anything else HTML
   * @return the folder's problems as notes; refused where there is no journal, or the checklist or
   *     the calibration in force cannot be read
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> write(Path folder, Path target) throws IOException {
    return write(folder, target, new BuildLog(messages)::html);
  }

  /** The same of the log's first page alone: the certificate. */
  public Checked<Path> writeCertificate(Path folder, Path target) throws IOException {
    return write(folder, target, new BuildLog(messages)::certificate);
  }

  private Checked<Path> write(Path folder, Path target, Function<BuildLogContent, String> page)
      throws IOException {
    Checked<BuildLogContent> content = content(folder);
    if (!(content instanceof Checked.Ok<BuildLogContent> ok)) {
      return Checked.refused(content.problems());
    }
    PaperFile.write(target, page.apply(ok.value()));
    Optional<Path> around = EnteredFile.folderAround(target);
    if (around.isPresent()) {
      EnteredFile.note(around.get(), FileRole.REPORT, target, OffsetDateTime.now(clock));
    }
    return Checked.ok(target, ok.notes());
  }

  private Checked<BuildLogContent> content(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      Where where = Where.file(folder.toString());
      return Checked.refused(Problem.error("world.missing", where, folder.toString()));
    }
    Checked<InstrumentView> opened = InstrumentView.begun(folder, messages.locale());
    if (!(opened instanceof Checked.Ok<InstrumentView> ok)) {
      return Checked.refused(opened.problems());
    }
    InstrumentView view = ok.value();
    OffsetDateTime now = OffsetDateTime.now(clock);
    Checked<Optional<BuildLogContent.Formula>> formula = formula(view, now);
    if (!formula.isOk()) {
      return Checked.refused(formula.problems());
    }
    List<String> notes = new ArrayList<>();
    view.problems().forEach(problem -> notes.add(messages.line(problem)));
    BuildLogContent.Pictures pictures = new BuildLogContent.Pictures(photos(view), logs(view));
    Optional<Use> use = use(view.state());
    List<Problem> all = new ArrayList<>(view.problems());
    return formula
        .map(
            f ->
                new BuildLogContent(
                    view.checklist(),
                    view.situation(now),
                    f,
                    pictures,
                    notes,
                    SoftwareVersion.text(),
                    use))
        .then(content -> Checked.ok(content, all));
  }

  private static Optional<Use> use(InstrumentState state) throws IOException {
    return state.designJson().isEmpty()
        ? Optional.empty()
        : DesignFile.parse(state.designJson().get(), Library.shipped())
            .fold((design, notes) -> Optional.of(design.use()), problems -> Optional.empty());
  }

  private static Checked<Optional<BuildLogContent.Formula>> formula(
      InstrumentView view, OffsetDateTime now) throws IOException {
    InstrumentState state = view.state();
    Optional<String> file =
        state
            .calibrationInForce(now)
            .or(() -> state.last(CalibrationMade.class).map(line -> line.event().file()));
    if (file.isEmpty()) {
      return Checked.ok(Optional.empty());
    }
    Checked<Calibration> read = CalibrationFile.read(view.path().resolve(file.get()), file.get());
    if (!(read instanceof Checked.Ok<Calibration> ok)) {
      return Checked.refused(read.problems());
    }
    List<Path> tables = FormulaRuns.tables(state, view.path());
    Checked<FitLook> look = KeepFormula.lookAgain(ok.value(), tables, JobWatch.NOBODY);
    return Checked.ok(
        Optional.of(new BuildLogContent.Formula(file.get(), ok.value(), look)), ok.notes());
  }

  private static List<BuildLogContent.FieldLog> logs(InstrumentView view) throws IOException {
    Map<String, String> hashes = new HashMap<>();
    for (Standing<FileAdded> line : view.state().standing(FileAdded.class)) {
      hashes.put(line.event().file(), line.event().sha256());
    }
    return KeptLogs.of(view.path(), view.state()).stream()
        .map(
            log ->
                new BuildLogContent.FieldLog(
                    log.name(),
                    hashes.getOrDefault(log.name(), ""),
                    log.span().from(),
                    log.span().to(),
                    log.converted(),
                    log.shape()))
        .toList();
  }

  private static Map<String, String> photos(InstrumentView view) throws IOException {
    Map<String, String> photos = new HashMap<>();
    for (Standing<PhotoAdded> line : view.state().standing(PhotoAdded.class)) {
      String name = line.event().file();
      Path file = view.path().resolve(name).normalize();
      boolean inside = file.startsWith(view.path().normalize());
      if (inside && Files.isRegularFile(file)) {
        pictureData(file, line.event().sha256()).ifPresent(data -> photos.put(name, data));
      }
    }
    return photos;
  }

  /**
   * A small photo that stands upright as it is, another made small and turned; one that was changed
   * since is left out.
   */
  private static Optional<String> pictureData(Path file, String sha256) throws IOException {
    if (!Sha256.of(file).equals(sha256)) {
      return Optional.empty();
    }
    if (Files.size(file) > WHOLE_PHOTO_BYTES || PhotoTurn.quartersClockwise(file) != 0) {
      return SmallPhoto.jpeg(file).map(bytes -> data("image/jpeg", bytes));
    }
    String type = String.valueOf(file.getFileName()).endsWith(".png") ? "image/png" : "image/jpeg";
    return Optional.of(data(type, Files.readAllBytes(file)));
  }

  private static String data(String type, byte[] bytes) {
    return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }
}
