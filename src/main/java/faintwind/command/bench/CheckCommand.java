package faintwind.command.bench;

import faintwind.job.bench.BenchFolder;
import faintwind.job.record.CheckPath;
import faintwind.job.record.CheckText;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind check PATH}. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class CheckCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "PATH", descriptionKey = "faintwind.check.path")
  private Path path = Path.of("");

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  public CheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (!BenchFolder.is(path)) {
      CheckPath.Finding finding = CheckPath.run(path, terminal.messages().locale());
      say(path, finding);
      return code(finding.problems());
    }
    List<String> told = new ArrayList<>();
    List<Problem> all = new ArrayList<>();
    for (Path instrument : BenchFolder.instruments(path)) {
      CheckPath.Finding finding = CheckPath.run(instrument, terminal.messages().locale());
      all.addAll(finding.problems());
      if (json) {
        told.add(CheckText.json(instrument.toString(), finding, Terminal.forPrograms()).strip());
      } else {
        say(instrument, finding);
      }
    }
    if (json) {
      terminal.out().println(told.stream().collect(Collectors.joining(",\n", "[ ", " ]")));
    }
    return code(all);
  }

  private void say(Path what, CheckPath.Finding finding) {
    List<Problem> problems = finding.problems();
    if (json) {
      terminal.out().print(CheckText.json(what.toString(), finding, Terminal.forPrograms()));
      return;
    }
    terminal.report(problems);
    String kind = terminal.messages().text(finding.kind());
    long errors = problems.stream().filter(Problem::isError).count();
    terminal.say("check.summary", what.toString(), kind, errors, problems.size() - errors);
  }

  private static int code(List<Problem> problems) {
    boolean sound = problems.stream().noneMatch(Problem::isError);
    return (sound ? ExitCode.DONE : ExitCode.of(problems)).number();
  }
}
