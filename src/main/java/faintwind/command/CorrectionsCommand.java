package faintwind.command;

import faintwind.job.turntable.TellCorrections;
import faintwind.message.Checked;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind corrections CAL.json RUNS.csv [--beside]}: what carried air, radius, draught,
 * direction and air state do to the speed; with {@code --beside} the carried air as the instrument
 * read it beside the arm's path.
 */
@Command(
    name = "corrections",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class CorrectionsCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "CAL.json", descriptionKey = "faintwind.corrections.cal")
  private Path calibration = Path.of("");

  @Parameters(index = "1", paramLabel = "RUNS.csv", descriptionKey = "faintwind.corrections.runs")
  private Path runs = Path.of("");

  @Option(names = "--beside", descriptionKey = "faintwind.corrections.beside")
  private boolean beside;

  public CorrectionsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    TellCorrections job = new TellCorrections(terminal.messages());
    Checked<List<String>> told =
        beside ? job.besideTheArm(calibration, runs) : job.ofRuns(calibration, runs);
    if (!(told instanceof Checked.Ok<List<String>> ok)) {
      return terminal.refuse(told.problems());
    }
    terminal.report(ok.notes());
    ok.value().forEach(terminal.out()::println);
    terminal.out().flush();
    return ExitCode.DONE.number();
  }
}
