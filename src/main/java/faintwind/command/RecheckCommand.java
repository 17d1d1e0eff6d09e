package faintwind.command;

import faintwind.command.record.InstrumentOptions;
import faintwind.job.formula.RecheckRuns;
import faintwind.job.record.AtInstrument;
import faintwind.job.record.KeepRuns;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.Rechecked;
import faintwind.record.JournalEntry;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code faintwind recheck CALIBRATION.json|FOLDER RUNS.csv}: ten minutes at the arm. */
@Command(
    name = "recheck",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class RecheckCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      index = "0",
      paramLabel = "CALIBRATION",
      descriptionKey = "faintwind.recheck.calibration")
  private Path calibration = Path.of("");

  @Parameters(index = "1", paramLabel = "RUNS.csv", descriptionKey = "faintwind.recheck.runs")
  private Path runs = Path.of("");

  @Mixin private WhoOption who = new WhoOption();

  public RecheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    return AtInstrument.is(calibration)
        ? say(atInstrument())
        : say(
            RecheckRuns.check(calibration, runs)
                .map(check -> new Told(check.agrees(), check.said(terminal.messages()), "")));
  }

  /** What came of it, and where it was kept. */
  private record Told(boolean agrees, List<String> lines, String kept) {}

  /** With what is in force there, kept and entered. */
  private Checked<Told> atInstrument() throws IOException {
    Clock clock = InstrumentOptions.clock();
    OffsetDateTime now = OffsetDateTime.now(clock);
    String name = calibration.toString();
    return new AtInstrument(calibration, clock, who.name())
        .work(
            (view, enter) -> {
              Optional<String> file = view.state().calibrationInForce(now);
              return file.isEmpty()
                  ? Checked.refused(Problem.error("convert.none-in-force", Where.file(name), name))
                  : KeepRuns.recheck(view.path(), file.get(), runs, enter, terminal.messages());
            })
        .map(JournalEntry::event)
        .map(Rechecked.class::cast)
        .map(done -> new Told(done.agrees(), List.of(done.text()), done.runs()));
  }

  private int say(Checked<Told> done) {
    if (!(done instanceof Checked.Ok<Told> ok)) {
      return terminal.refuse(done.problems());
    }
    terminal.report(ok.notes());
    Told told = ok.value();
    told.lines().forEach(terminal.out()::println);
    terminal.say(told.agrees() ? "recheck.stands" : "recheck.due");
    if (!told.kept().isEmpty()) {
      terminal.say("recheck.kept", told.kept());
    }
    return (told.agrees() ? ExitCode.DONE : ExitCode.LIMIT).number();
  }
}
