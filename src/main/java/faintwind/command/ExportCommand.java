package faintwind.command;

import faintwind.job.formula.ExportFormula;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind export CAL.json --as KIND --out FILE}. */
@Command(name = "export")
public final class ExportCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "CAL.json", descriptionKey = "faintwind.export.cal")
  private Path calibration = Path.of("");

  @Option(
      names = "--as",
      required = true,
      paramLabel = "KIND",
      descriptionKey = "faintwind.export.as")
  private ExportFormula.Kind kind = ExportFormula.Kind.C;

  @Mixin private OutOption out = new OutOption();

  public ExportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Optional<Problem> trouble = out.trouble(List.of(calibration));
    if (trouble.isPresent()) {
      terminal.report(List.of(trouble.get()));
      return ExitCode.USAGE.number();
    }
    Checked<Path> written =
        new ExportFormula(terminal.messages()).write(calibration, kind, out.path());
    if (!written.isOk()) {
      return terminal.refuse(written.problems());
    }
    terminal.report(written.problems());
    terminal.say("export.written", out.path().toString(), kind.word());
    return ExitCode.DONE.number();
  }
}
