package faintwind.command;

import faintwind.job.record.WriteReport;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind report INSTRUMENT_FOLDER --out LOG.html} (or {@code .pdf}). */
@Command(name = "report")
public final class ReportCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "INSTRUMENT_FOLDER", descriptionKey = "faintwind.report.folder")
  private Path folder = Path.of("");

  @Mixin private OutOption out = new OutOption();

  @Option(names = "--certificate", descriptionKey = "faintwind.report.certificate")
  private boolean certificate;

  public ReportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Optional<Problem> trouble = out.trouble(List.of(folder));
    if (trouble.isPresent()) {
      terminal.report(List.of(trouble.get()));
      return ExitCode.USAGE.number();
    }
    Clock clock = Clock.system(ZoneId.systemDefault());
    WriteReport job = new WriteReport(clock, terminal.messages());
    Checked<Path> written =
        certificate ? job.writeCertificate(folder, out.path()) : job.write(folder, out.path());
    if (!written.isOk()) {
      return terminal.refuse(written.problems());
    }
    terminal.report(written.problems());
    terminal.say("report.written", out.path().toString());
    return ExitCode.DONE.number();
  }
}
