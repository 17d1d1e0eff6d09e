package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.Performance;
import faintwind.calibration.response.EstimateRise;
import faintwind.calibration.response.TypedFormula;
import faintwind.job.formula.Calibrate;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.ProgressLine;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind calibrate RUNS.csv --out CAL.json [--report FILE.html]}. */
@Command(name = "calibrate")
public final class CalibrateCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "RUNS.csv", descriptionKey = "faintwind.calibrate.runs")
  private Path runs = Path.of("");

  @Mixin private OutOption out = new OutOption();

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

  @Option(names = "--refits", paramLabel = "COUNT", descriptionKey = "faintwind.calibrate.refits")
  private int refits = Calibrate.USUAL_REFITS;

  @Option(
      names = "--arm-from",
      paramLabel = "CALIBRATION.json",
      descriptionKey = "faintwind.calibrate.arm-from")
  private List<Path> armFrom = List.of();

  public CalibrateCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = misuse();
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    Calibrate.Settings settings =
        new Calibrate.Settings(
            Optional.ofNullable(instrument),
            refits,
            limit_pct == null ? OptionalDouble.empty() : OptionalDouble.of(limit_pct),
            Optional.ofNullable(profile),
            armFrom);
    Calibrate job =
        new Calibrate(Clock.system(ZoneId.systemDefault()), terminal.messages(), settings);
    Checked<Calibrate.Outcome> done = job.write(runs, out.path(), ProgressLine.on(terminal));
    if (!(done instanceof Checked.Ok<Calibrate.Outcome> ok)) {
      return terminal.refuse(done.problems());
    }
    if (report != null) {
      job.writePage(ok.value(), report);
    }
    Calibration calibration = ok.value().calibration();
    terminal.report(calibration.warnings());
    summary(calibration);
    boolean stands = ok.value().shortfalls().isEmpty();
    return stands ? ExitCode.DONE.number() : ExitCode.LIMIT.number();
  }

  private void summary(Calibration calibration) {
    terminal.say("calibrate.written", out.path().toString());
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
    terminal.say("calibrate.table.beyond");
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>();
    if (refits < 0 || refits > 10_000) {
      problems.add(problem("usage.range", String.valueOf(refits), "--refits", "0 … 10000"));
    }
    if (limit_pct != null && !(limit_pct > 0 && limit_pct <= 1000)) {
      problems.add(problem("usage.range", String.valueOf(limit_pct), "--limit-pct", "0 … 1000"));
    }
    out.trouble(List.of(runs)).ifPresent(problems::add);
    if (report != null) {
      out.output(report).trouble(List.of(runs, out.path())).ifPresent(problems::add);
      if (report.toAbsolutePath().normalize().equals(out.path().toAbsolutePath().normalize())) {
        problems.add(problem("usage.same-output", report.toString()));
      }
    }
    return problems;
  }

  private static Problem problem(String id, String found, String... details) {
    return Problem.error(id, Where.NOWHERE, found, details);
  }
}
