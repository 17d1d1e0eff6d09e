package faintwind.job.turntable;

import faintwind.calibration.Calibration;
import faintwind.calibration.Cancelled;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Planner;
import faintwind.calibration.plan.Response;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.files.AtomicFile;
import faintwind.files.Sha256;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.files.plan.PlanFile;
import faintwind.files.run.FileKind;
import faintwind.job.JobWatch;
import faintwind.job.design.KeptDesigns;
import faintwind.job.design.Size;
import faintwind.job.design.Sized;
import faintwind.job.formula.OpenCalibration;
import faintwind.job.record.Enter;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import faintwind.physics.design.CurvePoint;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import faintwind.report.page.Pdf;
import faintwind.report.sheet.RunSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Plans a session at the turntable, keeps the plan with the instrument, prints its sheet. */
public final class PlanTurntable {
  private static final double BREEZE_M_S = 1;

  /** Rows a second where nothing says how often the logger writes. */
  private static final double USUAL_STEP_S = 1;

  private PlanTurntable() {}

  /**
   * How an instrument answers.
   *
   * @param source a design, a calibration, or an instrument folder: there the calibration in force,
   *     or else the design on record
   * @param now the moment, for the calibration in force
   * @return refused where the source is none of these, or cannot be read
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Response> response(Path source, OffsetDateTime now) throws IOException {
    String name = source.toString();
    if (!Files.exists(source)) {
      return Checked.refused(Problem.error("file.missing", Where.file(name), name));
    }
    return switch (FileKind.of(source)) {
      case CALIBRATION -> OpenCalibration.read(source).map(PlanTurntable::of);
      case DESIGN -> Size.run(source).then(sized -> of(sized, name));
      case INSTRUMENT -> ofFolder(source, now);
      case ARM, CHAIN, PLAN, PROFILE, RUNS_TABLE, RUN_FILE, UNKNOWN ->
          Checked.refused(Problem.error("plan.no-source", Where.file(name), name));
    };
  }

  private static Checked<Response> ofFolder(Path folder, OffsetDateTime now) throws IOException {
    InstrumentState state = new InstrumentFolder(folder).open().state();
    Optional<String> inForce = state.calibrationInForce(now);
    if (inForce.isPresent()) {
      return CalibrationFile.read(folder.resolve(inForce.get()), inForce.get())
          .map(PlanTurntable::of);
    }
    return ofDesign(state.designJson(), folder.toString());
  }

  /**
   * The same from the design on record alone.
   *
   * @param design the design file's text
   * @param name how it is called in a problem
   */
  public static Checked<Response> ofDesign(Optional<String> design, String name)
      throws IOException {
    Optional<Sized> sized =
        design.isEmpty() ? Optional.empty() : KeptDesigns.withShippedParts().sized(design.get());
    return sized
        .map(found -> of(found, name))
        .orElseGet(() -> Checked.refused(Problem.error("plan.no-design", Where.file(name), name)));
  }

  /** From a first calibration. */
  static Response of(Calibration calibration) {
    Formula formula = Formula.of(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double perKelvin = Math.abs(calibration.signal().perKelvin());
    return new Response(
        Interval.exact(timeConstant_s(formula, 0, air)),
        Interval.exact(timeConstant_s(formula, BREEZE_M_S, air)),
        formula.steadyDelta_K(0, OptionalDouble.empty(), air),
        Math.max(1e-5, calibration.performance().noise() / perKelvin),
        calibration.performance().rowStep_s());
  }

  private static double timeConstant_s(Formula formula, double speed_m_s, AirPoint air) {
    double delta_K = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), air);
    return 1 / formula.loss_1_s(speed_m_s, delta_K, air);
  }

  /** From the design's prediction. */
  static Checked<Response> of(Sized sized, String name) {
    Optional<CurvePoint> still = at(sized, 0);
    Optional<CurvePoint> breeze = at(sized, BREEZE_M_S);
    if (still.isEmpty() || breeze.isEmpty() || !(still.get().signal_V() != 0)) {
      return Checked.refused(Problem.error("plan.no-design", Where.file(name), name));
    }
    double perKelvin_V = Math.abs(still.get().signal_V()) / still.get().delta_K().nominal();
    return Checked.ok(
        new Response(
            still.get().timeConstant_s(),
            breeze.get().timeConstant_s(),
            still.get().delta_K().nominal(),
            sized.design().sense().logger().u_V() / perKelvin_V,
            USUAL_STEP_S));
  }

  private static Optional<CurvePoint> at(Sized sized, double speed_m_s) {
    return sized.sheet().curve().stream().filter(p -> p.speed_m_s() == speed_m_s).findFirst();
  }

  /**
   * Plans.
   *
   * @return refused where nothing fits, with what would
   * @throws Cancelled where the watch says so
   */
  public static Checked<PlannedSession> plan(PlanRequest request, JobWatch watch) {
    watch.progress("plan", 0, 0);
    return Planner.plan(request, watch::cancelled)
        .map(choice -> new PlannedSession(request, choice));
  }

  /** Writes a plan, whole or not at all. */
  public static void write(PlannedSession planned, Path target) throws IOException {
    AtomicFile.write(target, PlanFile.text(planned).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Keeps a plan with the instrument, under plans/, and notes it in the journal.
   *
   * @throws IOException where the disk fails; then nothing is noted
   */
  public static Checked<JournalEntry> keep(Path folder, PlannedSession planned, Enter enter)
      throws IOException {
    Files.createDirectories(folder.resolve("plans"));
    int number = 1;
    while (Files.exists(folder.resolve("plans/plan-" + number + ".json"))) {
      number++;
    }
    String name = "plans/plan-" + number + ".json";
    write(planned, folder.resolve(name));
    return enter.plain(
        Optional.empty(),
        new Event.FileAdded(Event.FileRole.PLAN, name, Sha256.of(folder.resolve(name))));
  }

  /**
   * The plan kept last.
   *
   * @return empty where none was kept; refused where it cannot be read
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<Optional<PlannedSession>> kept(Path folder, InstrumentState state)
      throws IOException {
    Optional<String> last =
        state.standing(Event.FileAdded.class).stream()
            .map(Standing::event)
            .filter(file -> file.kind() == Event.FileRole.PLAN)
            .reduce((first, second) -> second)
            .map(Event.FileAdded::file);
    if (last.isEmpty()) {
      return Checked.ok(Optional.empty());
    }
    return PlanFile.read(folder.resolve(last.get()), last.get()).map(Optional::of);
  }

  /** The plan as the text of its file. */
  public static String text(PlannedSession planned) {
    return PlanFile.text(planned);
  }

  /**
   * Writes the sheet to take to a bench without a computer, as PDF where the name ends so.
   *
   * @param form which of the two plans; where there are no separate runs, the staircase
   * @param title stands on every page
   */
  public static void writeSheet(
      PlannedSession planned, Plan.Form form, Path target, String title, Messages words)
      throws IOException {
    Plan plan = planned.choice().of(form).orElse(planned.choice().staircase());
    String html = new RunSheet(words, title).html(planned.request(), plan);
    if (String.valueOf(target.getFileName()).toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      Pdf.write(html, bytes);
      AtomicFile.write(target, bytes.toByteArray());
    } else {
      AtomicFile.write(target, html.getBytes(StandardCharsets.UTF_8));
    }
  }
}
