package faintwind.job.demo;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.JobWatch;
import faintwind.job.design.KeptDesigns;
import faintwind.job.field.ConversionSummary;
import faintwind.job.field.Convert;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.KeepFormula;
import faintwind.job.record.Enter;
import faintwind.job.record.Enter.Person;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.WriteReport;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The whole main job on the shipped, made-up demonstration instrument: copy it, calibrate from its
 * runs, convert its field log, write the build log. Everything is done by the same jobs that work
 * on a real instrument.
 */
public final class Demo {
  /** Folder of the finished demonstration instrument. */
  public static final String FINISHED = "cellar";

  private static final int FEW_REFITS = 8;

  private final Clock clock;
  private final Messages messages;

  /** A demonstration at this time, in these words. */
  public Demo(Clock clock, Messages messages) {
    this.clock = clock;
    this.messages = messages;
  }

  /**
   * What was made.
   *
   * @param calibrationFile the calibration
   * @param speeds the field log as air speed
   * @param buildLog the build log
   * @param calibration what the file says
   * @param conversion the conversion in numbers
   */
  public record Made(
      Path calibrationFile,
      Path speeds,
      Path buildLog,
      Calibration calibration,
      ConversionSummary conversion) {}

  /**
   * Copies and works.
   *
   * @param into folder for the demonstration instruments; made where it is missing
   * @return what was made; refused where one of the jobs refuses
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Made> run(Path into, JobWatch watch) throws IOException {
    CopyDemo.into(into);
    Path folder = into.resolve(FINISHED);
    InstrumentState state = new InstrumentFolder(folder).open().state();
    Path table = folder.resolve(lastFile(state, FileRole.RUNS_TABLE));
    Path log = folder.resolve(lastFile(state, FileRole.FIELD_LOG));
    Calibrate.Settings settings =
        new Calibrate.Settings(Optional.empty(), FEW_REFITS, OptionalDouble.empty());
    KeepFormula keep = new KeepFormula(folder, new Calibrate(clock, messages, settings));
    Checked<KeepFormula.Kept> fitted = keep.fit(table, watch);
    if (!(fitted instanceof Checked.Ok<KeepFormula.Kept> kept)) {
      return Checked.refused(fitted.problems());
    }
    KeepFormula.Kept formula = kept.value();
    List<Event> events = new ArrayList<>(keep.events(formula));
    events.add(new CalibrationPutInForce(formula.file()));
    enter(folder, events);
    Calibration calibration = formula.formula().calibration();
    Path speeds = log.resolveSibling("speeds-" + log.getFileName());
    SpeedSettings averages = SpeedSettings.usual(calibration);
    Checked<ConversionSummary> converted =
        new Convert(calibration, formula.file(), averages).file(log, speeds, watch);
    if (!(converted instanceof Checked.Ok<ConversionSummary> conversion)) {
      return Checked.refused(converted.problems());
    }
    Checked<Path> written = new WriteReport(clock, messages).keep(folder);
    List<Problem> notes = written.problems();
    return written
        .map(
            path ->
                new Made(
                    folder.resolve(formula.file()), speeds, path, calibration, conversion.value()))
        .then(made -> Checked.ok(made, notes));
  }

  private void enter(Path folder, List<Event> events) throws IOException {
    KeptDesigns designs = KeptDesigns.withShippedParts();
    Checked<InstrumentView> view = InstrumentView.open(folder, designs::sheet);
    if (view instanceof Checked.Ok<InstrumentView> ok) {
      new Enter(ok.value(), clock, Person.named("faintwind demo")).plain(Optional.empty(), events);
    }
  }

  private static String lastFile(InstrumentState state, FileRole kind) throws IOException {
    return state.standing(FileAdded.class).stream()
        .map(Standing::event)
        .filter(event -> event.kind() == kind)
        .reduce((first, second) -> second)
        .map(FileAdded::file)
        .orElseThrow(() -> new IOException("the demonstration has no " + kind));
  }
}
