package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.Measured.By;
import faintwind.calibration.Performance;
import faintwind.calibration.response.EstimateRise;
import faintwind.calibration.response.TypedFormula;
import faintwind.command.record.InstrumentOptions;
import faintwind.job.EnteredFile;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.CalibrationText;
import faintwind.job.formula.FittedFormula;
import faintwind.job.formula.KeepArm;
import faintwind.job.formula.KeepFormula;
import faintwind.job.formula.MeasuredWhen;
import faintwind.job.record.AtInstrument;
import faintwind.job.record.KeepCalibration;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.ProgressLine;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind calibrate RUNS.csv --out CAL.json [--report FILE.html]}; {@code faintwind
 * calibrate FOLDER} fits the runs of an instrument and keeps the calibration with it.
 */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class CalibrateCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "RUNS.csv", descriptionKey = "faintwind.calibrate.runs")
  private Path runs = Path.of("");

  @Option(names = "--out", paramLabel = "CAL.json", descriptionKey = "faintwind.calibrate.out")
  private @Nullable Path out;

  @Mixin private WhoOption who = new WhoOption();

  @Mixin private CommonOptions common = new CommonOptions();

  @Option(
      names = "--report",
      paramLabel = "FILE.html",
      descriptionKey = "faintwind.calibrate.report")
  private @Nullable Path report;

  @Option(
      names = "--instrument",
      paramLabel = "NAME",
      descriptionKey = "faintwind.calibrate.instrument")
  private @Nullable String instrument;

  @Option(names = "--profile", paramLabel = "PROFILE", descriptionKey = "profile")
  private @Nullable String profile;

  @Option(names = "--limit-pct", paramLabel = "PCT", descriptionKey = "faintwind.calibrate.limit")
  private @Nullable Double limit_pct;

  @Mixin private MeasuredOptions measured = new MeasuredOptions();

  @Option(names = "--refits", paramLabel = "COUNT", descriptionKey = "faintwind.calibrate.refits")
  private int refits = Calibrate.USUAL_REFITS;

  @Option(
      names = "--arm-from",
      paramLabel = "FILE.json",
      descriptionKey = "faintwind.calibrate.arm-from")
  private List<Path> armFrom = List.of();

  @Option(
      names = "--keep-arm",
      paramLabel = "ARM.json",
      descriptionKey = "faintwind.calibrate.keep-arm")
  private @Nullable Path keepArm;

  @Option(names = "--files-outside", descriptionKey = "faintwind.calibrate.files-outside")
  private boolean filesOutside;

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  public CalibrateCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = misuse();
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      if (misuse.stream().anyMatch(problem -> problem.id().equals("usage.missing"))) {
        terminal.tell("usage.see-help", "faintwind calibrate");
      }
      return ExitCode.USAGE.number();
    }
    List<Problem> noArm = keepArm == null ? List.of() : KeepArm.trouble(keepArm);
    if (!noArm.isEmpty()) {
      return terminal.refuse(noArm);
    }
    Calibrate.Settings settings =
        new Calibrate.Settings(
            Optional.ofNullable(instrument),
            refits,
            limit_pct == null ? OptionalDouble.empty() : OptionalDouble.of(limit_pct),
            Optional.ofNullable(profile),
            measured.said(),
            armFrom,
            filesOutside ? Calibrate.RunFiles.ANYWHERE : Calibrate.RunFiles.WITH_THE_TABLE);
    Calibrate job =
        new Calibrate(Clock.system(ZoneId.systemDefault()), terminal.messages(), settings);
    return out == null ? keep(job) : write(job, out);
  }

  private int write(Calibrate job, Path target) throws IOException {
    List<Problem> shut = new IntoInstruments(who.name()).trouble(List.of(target));
    if (!shut.isEmpty()) {
      return terminal.refuse(shut);
    }
    Checked<Calibrate.Outcome> done = job.write(runs, target, ProgressLine.on(terminal));
    if (!(done instanceof Checked.Ok<Calibrate.Outcome> ok)) {
      return terminal.refuse(done.problems());
    }
    if (report != null) {
      job.writePage(ok.value(), report);
    }
    Optional<Path> around = EnteredFile.folderAround(target);
    if (around.isPresent()) {
      Checked<?> entered = new KeepCalibration(at(around.get())).enter(target);
      if (!entered.isOk()) {
        return terminal.refuse(entered.problems());
      }
    }
    return told(ok.value().calibration(), target, ok.value().shortfalls());
  }

  /** Fits the runs of an instrument and keeps what comes of it with the instrument. */
  private int keep(Calibrate job) throws IOException {
    KeepFormula formula = new KeepFormula(runs, job);
    Checked<KeepFormula.Kept> made =
        new KeepCalibration(at(runs)).make(formula, ProgressLine.on(terminal));
    if (!(made instanceof Checked.Ok<KeepFormula.Kept> ok)) {
      return terminal.refuse(made.problems());
    }
    FittedFormula fitted = ok.value().formula();
    return told(fitted.calibration(), runs.resolve(ok.value().file()), fitted.shortfalls());
  }

  private AtInstrument at(Path folder) {
    return new AtInstrument(folder, InstrumentOptions.clock(), who.name());
  }

  private int told(Calibration calibration, Path target, List<Problem> shortfalls)
      throws IOException {
    terminal.report(calibration.warnings());
    boolean kept = armKept(calibration);
    if (json) {
      String file = target.toString();
      terminal
          .out()
          .print(CalibrationText.json(calibration, file, shortfalls, Terminal.forPrograms()));
    } else {
      summary(calibration, target);
    }
    return (kept && shortfalls.isEmpty() ? ExitCode.DONE : ExitCode.LIMIT).number();
  }

  /** Whether the record of the arm has what it should have; the calibration is written already. */
  private boolean armKept(Calibration calibration) throws IOException {
    if (keepArm == null) {
      return true;
    }
    Checked<Path> kept = KeepArm.add(keepArm, calibration);
    if (kept.isOk()) {
      terminal.tell("air.written", keepArm.toString());
    } else {
      terminal.report(kept.problems());
    }
    return kept.isOk();
  }

  private void summary(Calibration calibration, Path target) {
    terminal.say("calibrate.written", target.toString());
    terminal.say("calibrate.equation", terminal.messages().text(calibration.formula().equation()));
    TypedFormula typed =
        TypedFormula.of(calibration.formula(), calibration.signal(), calibration.coverage());
    terminal.say(
        "calibrate.typed", terminal.messages().text(typed.key(), typed.numbers().toArray()));
    terminal.say(
        "calibrate.range",
        Numerals.places(calibration.coverage().lowest_m_s(), 3),
        Numerals.places(calibration.coverage().highest_m_s(), 3),
        Numerals.places(calibration.performance().floor_m_s(), 3));
    terminal.say("calibrate.table.head");
    for (Performance.AtSpeed at : calibration.performance().speeds()) {
      String row =
          String.format(
              Locale.ROOT,
              "%9.3f%s %9.3f  %6.1f  %11.1f s  %14.1f s",
              at.speed_m_s(),
              calibration.coverage().isBeyond(at.speed_m_s()) ? "*" : " ",
              at.u95_m_s(),
              100 * at.u95_m_s() / at.speed_m_s(),
              at.rise_s(),
              EstimateRise.s(calibration, at.speed_m_s()));
      terminal.out().println(row);
    }
    terminal.say("calibration-page.beyond");
    terminal.say("calibration-page.rise.note");
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>();
    OptionRange.trouble("--refits", refits, Calibrate.REFITS).ifPresent(problems::add);
    OptionRange.trouble("--limit-pct", limit_pct, Calibrate.LIMIT).ifPresent(problems::add);
    problems.addAll(out == null ? noOut() : inTheWay(out));
    return problems;
  }

  private List<Problem> noOut() {
    if (!AtInstrument.is(runs)) {
      return List.of(problem("usage.missing", "--out"));
    }
    return report == null ? List.of() : List.of(problem("usage.calibrate-kept", "--report"));
  }

  private List<Problem> inTheWay(Path target) throws IOException {
    if (AtInstrument.is(runs)) {
      return List.of(problem("usage.calibrate-kept", "--out"));
    }
    List<Problem> problems = new ArrayList<>();
    common.output(target).trouble(List.of(runs)).ifPresent(problems::add);
    if (report != null) {
      common.output(report).trouble(List.of(runs, target)).ifPresent(problems::add);
      if (report.toAbsolutePath().normalize().equals(target.toAbsolutePath().normalize())) {
        problems.add(problem("usage.same-output", report.toString()));
      }
    }
    return problems;
  }

  private static Problem problem(String id, String found, String... details) {
    return Problem.error(id, Where.NOWHERE, found, details);
  }

  /** When and with what runs were measured, as options. */
  static final class MeasuredOptions {
    @Option(
        names = "--measured-on",
        paramLabel = "TIME",
        descriptionKey = "faintwind.calibrate.measured-on")
    private @Nullable OffsetDateTime on;

    @Option(
        names = "--operator",
        paramLabel = "NAME",
        descriptionKey = "faintwind.calibrate.operator")
    private @Nullable String operator;

    @Option(names = "--place", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.place")
    private @Nullable String place;

    @Option(names = "--arm", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.arm")
    private @Nullable String arm;

    @Option(names = "--meter", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.meter")
    private @Nullable String meter;

    @Option(names = "--logger", paramLabel = "TEXT", descriptionKey = "faintwind.calibrate.logger")
    private @Nullable String logger;

    MeasuredWhen said() {
      Map<By, String> by = new EnumMap<>(By.class);
      put(by, By.OPERATOR, operator);
      put(by, By.PLACE, place);
      put(by, By.ARM, arm);
      put(by, By.METER, meter);
      put(by, By.LOGGER, logger);
      return new MeasuredWhen(Optional.ofNullable(on), by);
    }

    private static void put(Map<By, String> by, By which, @Nullable String text) {
      if (text != null && !text.isBlank()) {
        by.put(which, text);
      }
    }
  }
}
