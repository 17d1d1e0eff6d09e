package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.JobWatch;
import faintwind.job.field.ConversionSummary;
import faintwind.job.field.ConversionText;
import faintwind.job.field.Convert;
import faintwind.job.formula.OpenCalibration;
import faintwind.job.formula.Profiles;
import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.FileRole;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind convert CAL.json LOG.csv… --out SPEEDS.csv | --out - | --out-dir DIR}; {@code
 * faintwind convert FOLDER LOG.csv…} keeps them with the instrument.
 */
@Command(name = "convert")
public final class ConvertCommand implements Callable<Integer> {
  private static final String STANDARD = "-";

  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "CAL.json", descriptionKey = "faintwind.convert.cal")
  private Path calibration = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "LOG.csv",
      descriptionKey = "faintwind.convert.log")
  private List<String> logs = new ArrayList<>();

  @Option(names = "--out", paramLabel = "SPEEDS.csv", descriptionKey = "faintwind.convert.out")
  private @Nullable String out;

  @Option(names = "--out-dir", paramLabel = "DIR", descriptionKey = "faintwind.convert.out-dir")
  private @Nullable Path outDir;

  @Option(
      names = "--average-s",
      paramLabel = "SECONDS",
      descriptionKey = "faintwind.convert.average-s")
  private @Nullable Double average_s;

  @Option(names = "--minutes", paramLabel = "FILE", descriptionKey = "faintwind.convert.minutes")
  private @Nullable Path minutes;

  @Option(names = "--profile", paramLabel = "PROFILE", descriptionKey = "profile")
  private @Nullable String profile;

  @Option(names = "--decimal-comma", descriptionKey = "faintwind.convert.decimal-comma")
  private boolean decimalComma;

  @Mixin private WhoOption who = new WhoOption();

  @Option(names = "--json", descriptionKey = "faintwind.convert.json")
  private boolean json;

  private final List<ConversionSummary> summaries = new ArrayList<>();

  @Mixin private AirOptions air = new AirOptions();

  @Mixin private StandardOptions common = new StandardOptions();

  public ConvertCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = misuse();
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    if (minutes != null && intoFolder()) {
      Files.createDirectories(minutes);
    }
    if (AtInstrument.is(calibration)) {
      Optional<String> lines = Optional.ofNullable(profile);
      return new ConvertKept(terminal, calibration, this::settings, lines, this::minutesOf)
          .run(logs, who.name());
    }
    Checked<Calibration> opened = OpenCalibration.read(calibration);
    if (!(opened instanceof Checked.Ok<Calibration> ok)) {
      return terminal.refuse(opened.problems());
    }
    Convert convert = new Convert(ok.value(), calibration.toString(), settings(ok.value()));
    convert = minutes == null ? convert : convert.withMinutes(minutes);
    convert = decimalComma ? convert.withCommas() : convert;
    Checked<Convert> ready =
        profile == null ? Checked.ok(convert) : Profiles.find(profile).map(convert::reading);
    if (!(ready instanceof Checked.Ok<Convert> able)) {
      return terminal.refuse(ready.problems());
    }
    IntoInstruments instruments = new IntoInstruments(who.name());
    List<Problem> shut = instruments.trouble(targets());
    if (!shut.isEmpty()) {
      return terminal.refuse(shut);
    }
    Map<Path, FileRole> written = new LinkedHashMap<>();
    int code = outDir == null ? one(able.value(), written) : many(able.value(), outDir, written);
    if (json) {
      (STANDARD.equals(out) ? terminal.err() : terminal.out())
          .print(ConversionText.json(summaries));
    }
    List<Problem> notEntered = instruments.enter(written);
    return notEntered.isEmpty() ? code : terminal.refuse(notEntered);
  }

  /** Whether minutes go into a folder, one file a log. */
  private boolean intoFolder() {
    return outDir != null || logs.size() > 1;
  }

  private Optional<Path> minutesOf(String log) {
    return Optional.ofNullable(minutes)
        .map(to -> intoFolder() ? Convert.target(Path.of(log), to) : to);
  }

  private SpeedSettings settings(Calibration by) {
    return average_s == null
        ? SpeedSettings.usual(by, air.air())
        : new SpeedSettings(average_s, air.air());
  }

  private int one(Convert convert, Map<Path, FileRole> written) throws IOException {
    String log = logs.get(0);
    boolean toStandard = STANDARD.equals(out);
    Path target = Path.of(String.valueOf(out));
    Checked<ConversionSummary> done;
    if (log.equals(STANDARD)) {
      String name = terminal.messages().text("terminal.standard-input");
      done =
          toStandard
              ? convert.stream(terminal.in(), terminal.raw(), name, JobWatch.NOBODY)
              : convert.streamToFile(terminal.in(), target, name, JobWatch.NOBODY);
    } else {
      Path file = Path.of(log);
      done =
          toStandard
              ? convert.fileTo(file, terminal.raw(), JobWatch.NOBODY)
              : convert.file(file, target, JobWatch.NOBODY);
    }
    if (!tell(done)) {
      return ExitCode.of(done.problems()).number();
    }
    if (!toStandard) {
      written.put(target, FileRole.SPEEDS);
    }
    minutesOf(log).ifPresent(file -> written.put(file, FileRole.MINUTES));
    return ExitCode.DONE.number();
  }

  private int many(Convert convert, Path folder, Map<Path, FileRole> written) throws IOException {
    List<Path> files = logs.stream().map(Path::of).toList();
    List<Problem> problems = new ArrayList<>();
    int refused = 0;
    for (Convert.LogOutcome outcome : convert.files(files, folder, JobWatch.NOBODY)) {
      if (tell(outcome.outcome())) {
        written.put(Convert.target(outcome.log(), folder), FileRole.SPEEDS);
        minutesOf(outcome.log().toString()).ifPresent(f -> written.put(f, FileRole.MINUTES));
      } else {
        refused++;
        problems.addAll(outcome.outcome().problems());
      }
    }
    if (refused == files.size()) {
      return ExitCode.of(problems).number();
    }
    return refused > 0 ? ExitCode.LIMIT.number() : ExitCode.DONE.number();
  }

  private boolean tell(Checked<ConversionSummary> done) {
    terminal.report(done.problems());
    if (done instanceof Checked.Ok<ConversionSummary> ok) {
      summaries.add(ok.value());
      if (!json) {
        ok.value().lines(terminal.messages()).forEach(terminal.err()::println);
      }
    }
    return done.isOk();
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>(air.problems());
    OptionRange.trouble("--average-s", average_s, SpeedSettings.AVERAGE).ifPresent(problems::add);
    if (AtInstrument.is(calibration)) {
      if (out != null || outDir != null || logs.contains(STANDARD)) {
        problems.add(problem("usage.convert-kept", ""));
        return problems;
      }
      if (decimalComma) {
        problems.add(problem("usage.convert-commas-kept", "--decimal-comma"));
        return problems;
      }
    } else if ((out == null) == (outDir == null)) {
      problems.add(problem("usage.convert-where", ""));
    } else if (out != null && logs.size() > 1) {
      problems.add(problem("usage.convert-many", String.valueOf(logs.size())));
    } else if (outDir != null && logs.contains(STANDARD)) {
      problems.add(problem("usage.convert-stream", STANDARD));
    }
    if (problems.isEmpty()) {
      problems.addAll(inTheWay());
    }
    return problems;
  }

  private List<Problem> inTheWay() throws IOException {
    List<Path> inputs = new ArrayList<>(List.of(calibration));
    logs.stream().filter(log -> !log.equals(STANDARD)).map(Path::of).forEach(inputs::add);
    List<Problem> problems = new ArrayList<>();
    Set<Path> seen = new HashSet<>();
    for (Path target : targets()) {
      if (!seen.add(target)) {
        problems.add(problem("usage.convert-same-name", target.toString()));
      }
      common.output(target).trouble(inputs).ifPresent(problems::add);
    }
    return problems;
  }

  /** Every file that would be written where it was asked for. */
  private List<Path> targets() {
    List<Path> targets = new ArrayList<>();
    for (String log : logs) {
      if (outDir != null) {
        targets.add(Convert.target(Path.of(log), outDir));
      }
      minutesOf(log).ifPresent(targets::add);
    }
    if (out != null && !STANDARD.equals(out)) {
      targets.add(0, Path.of(out));
    }
    return targets;
  }

  private static Problem problem(String id, String found, String... details) {
    return Problem.error(id, Where.NOWHERE, found, details);
  }
}
