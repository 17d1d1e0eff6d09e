package faintwind.command;

import faintwind.job.bench.BenchFolder;
import faintwind.job.record.OrderText;
import faintwind.job.record.PrintSteps;
import faintwind.job.record.PrintSteps.Extent;
import faintwind.job.record.PrintSteps.Wanted;
import faintwind.job.step.TodayText;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind steps INSTRUMENT_FOLDER}: what can be done now and what waits; with {@code
 * --out} the steps on paper.
 */
@Command(name = "steps")
public final class StepsCommand implements Callable<Integer> {
  private final Terminal terminal;
  private final Clock clock = Clock.system(ZoneId.systemDefault());

  @Parameters(paramLabel = "INSTRUMENT_FOLDER", descriptionKey = "faintwind.steps.folder")
  private Path folder = Path.of("");

  @Option(names = "--out", paramLabel = "STEPS.html", descriptionKey = "faintwind.steps.out")
  private @Nullable Path out;

  @Option(names = "--stage", paramLabel = "STAGE", descriptionKey = "faintwind.steps.stage")
  private @Nullable String stage;

  @Option(names = "--step", paramLabel = "STEP", descriptionKey = "faintwind.steps.step")
  private @Nullable String step;

  @Option(names = "--minutes", paramLabel = "N", descriptionKey = "faintwind.steps.minutes")
  private int minutes;

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  @Mixin private StandardOptions common = new StandardOptions();

  public StepsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (stage != null && step != null) {
      return terminal.misuse(Problem.error("steps.stage-and-step", Where.NOWHERE, step));
    }
    if (minutes > 0) {
      return today();
    }
    if (out == null) {
      return stage == null && step == null
          ? order()
          : terminal.misuse(Problem.error("steps.no-out", Where.NOWHERE, ""));
    }
    return BenchFolder.is(folder) ? printAll(out) : print(folder, out);
  }

  /** A file for each instrument of a folder, into a folder that is made; none is written over. */
  private int printAll(Path target) throws IOException {
    if (Files.exists(target) && !Files.isDirectory(target)) {
      String file = target.toString();
      return terminal.misuse(Problem.error("steps.out-folder", Where.file(file), file));
    }
    int code = ExitCode.DONE.number();
    for (Path instrument : BenchFolder.instruments(folder)) {
      Files.createDirectories(target);
      code = Math.max(code, print(instrument, target.resolve(instrument.getFileName() + ".html")));
    }
    return code;
  }

  private int order() throws IOException {
    if (!BenchFolder.is(folder)) {
      return order(folder, json);
    }
    int code = ExitCode.DONE.number();
    String between = "[ ";
    for (Path instrument : BenchFolder.instruments(folder)) {
      if (json) {
        terminal.out().print(between);
        between = ", ";
      } else {
        terminal.out().println(instrument);
      }
      code = Math.max(code, order(instrument, json));
    }
    terminal.out().print(json ? "]\n" : "");
    return code;
  }

  private int order(Path instrument, boolean asJson) throws IOException {
    OrderText order = new OrderText(clock, asJson ? Terminal.forPrograms() : terminal.messages());
    if (asJson) {
      Checked<String> told = order.json(instrument);
      terminal.report(told.isOk() ? told.problems() : List.of());
      told.map(List::of)
          .fold((text, notes) -> text, problems -> List.<String>of())
          .forEach(terminal.out()::print);
      return told.isOk() ? ExitCode.DONE.number() : terminal.refuse(told.problems());
    }
    Checked<List<String>> lines = order.lines(instrument);
    if (lines instanceof Checked.Ok<List<String>> ok) {
      terminal.report(ok.notes());
      ok.value().forEach(terminal.out()::println);
      return ExitCode.DONE.number();
    }
    return terminal.refuse(lines.problems());
  }

  private int today() throws IOException {
    TodayText words = new TodayText(clock, terminal.messages());
    if (out != null) {
      Optional<Problem> trouble = common.output(out).trouble(List.of(folder));
      if (trouble.isPresent()) {
        return terminal.misuse(trouble.get());
      }
    }
    Checked<?> told =
        out == null ? words.lines(folder, minutes) : words.write(folder, minutes, out);
    if (!told.isOk()) {
      return terminal.refuse(told.problems());
    }
    terminal.report(told.problems());
    if (out != null) {
      terminal.say("steps.written", out.toString());
    } else {
      told.fold((lines, notes) -> (List<?>) lines, problems -> List.of())
          .forEach(terminal.out()::println);
    }
    return ExitCode.DONE.number();
  }

  private int print(Path instrument, Path target) throws IOException {
    Optional<Problem> trouble = common.output(target).trouble(List.of(instrument));
    if (trouble.isPresent()) {
      return terminal.misuse(trouble.get());
    }
    Checked<Path> written =
        new PrintSteps(clock, terminal.messages()).write(instrument, wanted(), target);
    if (!written.isOk()) {
      return terminal.refuse(written.problems());
    }
    terminal.report(written.problems());
    terminal.say("steps.written", target.toString());
    return ExitCode.DONE.number();
  }

  private Wanted wanted() {
    if (stage != null) {
      return new Wanted(Extent.STAGE, stage);
    }
    return step == null ? Wanted.ALL : new Wanted(Extent.STEP, step);
  }
}
