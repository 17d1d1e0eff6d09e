package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.command.record.InstrumentOptions;
import faintwind.job.EnteredFile;
import faintwind.job.JobWatch;
import faintwind.job.field.ConversionSummary;
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
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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
@Command(
    name = "convert",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
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

  @Option(names = "--who", paramLabel = "NAME", descriptionKey = "who")
  private String who = System.getProperty("user.name", "");

  @Mixin private AirOptions air = new AirOptions();

  @Mixin private CommonOptions common = new CommonOptions();

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
    if (AtInstrument.is(calibration)) {
      return new ConvertKept(terminal, calibration, this::settings, Optional.ofNullable(profile))
          .run(logs, who);
    }
    Checked<Calibration> opened = OpenCalibration.read(calibration);
    if (!(opened instanceof Checked.Ok<Calibration> ok)) {
      return terminal.refuse(opened.problems());
    }
    Convert convert = new Convert(ok.value(), calibration.toString(), settings(ok.value()));
    convert = minutes == null ? convert : convert.withMinutes(minutes);
    Checked<Convert> ready =
        profile == null ? Checked.ok(convert) : Profiles.find(profile).map(convert::reading);
    if (!(ready instanceof Checked.Ok<Convert> able)) {
      return terminal.refuse(ready.problems());
    }
    int code = outDir == null ? one(able.value()) : many(able.value(), outDir);
    for (Path target : targets()) {
      Optional<Path> around = EnteredFile.folderAround(target);
      if (around.isPresent() && Files.isRegularFile(target)) {
        EnteredFile.note(
            around.get(), FileRole.SPEEDS, target, OffsetDateTime.now(InstrumentOptions.clock()));
      }
    }
    return code;
  }

  private SpeedSettings settings(Calibration by) {
    return average_s == null
        ? SpeedSettings.usual(by, air.air())
        : new SpeedSettings(average_s, air.air());
  }

  private int one(Convert convert) throws IOException {
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
    return (tell(done) ? ExitCode.DONE : ExitCode.of(done.problems())).number();
  }

  private int many(Convert convert, Path folder) throws IOException {
    List<Path> files = logs.stream().map(Path::of).toList();
    List<Problem> problems = new ArrayList<>();
    int refused = 0;
    for (Convert.LogOutcome outcome : convert.files(files, folder, JobWatch.NOBODY)) {
      if (!tell(outcome.outcome())) {
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
    done.map(summary -> summary.lines(terminal.messages()))
        .fold((lines, notes) -> lines, problems -> List.<String>of())
        .forEach(terminal.err()::println);
    return done.isOk();
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>(air.problems());
    OptionRange.trouble("--average-s", average_s, SpeedSettings.AVERAGE).ifPresent(problems::add);
    if (AtInstrument.is(calibration)) {
      if (out != null || outDir != null || logs.contains(STANDARD)) {
        problems.add(problem("usage.convert-kept", ""));
      }
      return problems;
    }
    if ((out == null) == (outDir == null)) {
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
      Optional<Problem> trouble = common.output(target).trouble(inputs);
      Optional<Path> around = EnteredFile.folderAround(target);
      if (around.isPresent() && EnteredFile.isEntered(around.get(), target)) {
        problems.add(problem("output.entered", target.toString()));
      }
      trouble.ifPresent(problems::add);
    }
    return problems;
  }

  private List<Path> targets() {
    List<Path> targets = new ArrayList<>();
    if (outDir != null) {
      for (String log : logs) {
        targets.add(Convert.target(Path.of(log), outDir));
        if (minutes != null) {
          targets.add(Convert.target(Path.of(log), minutes));
        }
      }
      return targets;
    }
    if (!STANDARD.equals(out)) {
      targets.add(Path.of(String.valueOf(out)));
    }
    if (minutes != null) {
      targets.add(minutes);
    }
    return targets;
  }

  private static Problem problem(String id, String found, String... details) {
    return Problem.error(id, Where.NOWHERE, found, details);
  }
}
