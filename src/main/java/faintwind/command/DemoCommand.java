package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.job.FreeName;
import faintwind.job.demo.Demo;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.ProgressLine;
import faintwind.terminal.Terminal;
import faintwind.ui.FaintwindApp;
import java.io.IOException;
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

/** {@code faintwind demo}: the whole main job on the shipped, made-up instrument. */
@Command(name = "demo")
public final class DemoCommand implements Callable<Integer> {
  private static final String FOLDER = "faintwind-demo";

  private final Terminal terminal;

  @Option(names = "--out-dir", paramLabel = "DIR", descriptionKey = "faintwind.demo.out-dir")
  private @Nullable Path chosen;

  @Option(names = "--no-window", descriptionKey = "faintwind.demo.no-window")
  private boolean withoutWindow;

  @Mixin private StandardOptions common = new StandardOptions();

  public DemoCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Path outDir = chosen == null ? freeFolder() : chosen;
    Path journal = outDir.resolve(Demo.FINISHED).resolve("journal.jsonl");
    Optional<Problem> trouble = common.output(journal).occupied(List.of());
    if (trouble.isPresent()) {
      terminal.report(List.of(trouble.get()));
      return ExitCode.USAGE.number();
    }
    terminal.say("demo.begins", outDir.toString());
    Demo demo = new Demo(Clock.system(ZoneId.systemDefault()), terminal.messages());
    Checked<Demo.Made> done = demo.run(outDir, ProgressLine.on(terminal));
    if (!(done instanceof Checked.Ok<Demo.Made> ok)) {
      return terminal.refuse(done.problems());
    }
    Demo.Made made = ok.value();
    terminal.report(made.calibration().warnings());
    terminal.report(ok.notes());
    Calibration calibration = made.calibration();
    terminal.say(
        "demo.range",
        Numerals.places(calibration.coverage().lowest_m_s(), 3),
        Numerals.places(calibration.coverage().highest_m_s(), 3),
        Numerals.places(calibration.performance().floor_m_s(), 3));
    made.conversion().lines(terminal.messages()).forEach(terminal.out()::println);
    terminal.say("demo.calibration", made.calibrationFile().toString());
    terminal.say("demo.speeds", made.speeds().toString());
    terminal.say("demo.build-log", made.buildLog().toString());
    Optional<String> language = Optional.of(terminal.messages().locale().toLanguageTag());
    if (!withoutWindow && FaintwindApp.open(outDir, Optional.empty(), language).isPresent()) {
      terminal.say("demo.no-display");
    }
    return ExitCode.DONE.number();
  }

  /** A folder of its own for every demonstration, so that none is in the way of the next. */
  private static Path freeFolder() {
    return FreeName.in(Path.of(""), FOLDER);
  }
}
