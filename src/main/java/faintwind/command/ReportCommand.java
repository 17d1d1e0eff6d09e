package faintwind.command;

import faintwind.job.bench.BenchFolder;
import faintwind.job.record.WriteReport;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    Map<Path, Path> pages = new LinkedHashMap<>();
    if (BenchFolder.is(folder)) {
      for (Path instrument : BenchFolder.instruments(folder)) {
        pages.put(instrument, out.path().resolve(instrument.getFileName() + ".html"));
      }
    } else {
      pages.put(folder, out.path());
    }
    List<Problem> troubles = new ArrayList<>();
    for (Path page : pages.values()) {
      out.output(page).trouble(List.of(folder)).ifPresent(troubles::add);
    }
    if (!troubles.isEmpty()) {
      terminal.report(troubles);
      return ExitCode.USAGE.number();
    }
    if (BenchFolder.is(folder)) {
      Files.createDirectories(out.path());
    }
    int code = ExitCode.DONE.number();
    for (Map.Entry<Path, Path> page : pages.entrySet()) {
      code = Math.max(code, write(page.getKey(), page.getValue()));
    }
    return code;
  }

  private int write(Path instrument, Path page) throws IOException {
    Clock clock = Clock.system(ZoneId.systemDefault());
    WriteReport job = new WriteReport(clock, terminal.messages());
    Checked<Path> written =
        certificate ? job.writeCertificate(instrument, page) : job.write(instrument, page);
    if (!written.isOk()) {
      return terminal.refuse(written.problems());
    }
    terminal.report(written.problems());
    terminal.say("report.written", page.toString());
    return ExitCode.DONE.number();
  }
}
