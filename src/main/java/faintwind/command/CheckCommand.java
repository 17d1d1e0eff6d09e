package faintwind.command;

import faintwind.job.record.CheckPath;
import faintwind.job.record.CheckText;
import faintwind.message.Problem;
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
    CheckPath.Finding finding = CheckPath.run(path);
    List<Problem> problems = finding.problems();
    if (json) {
      terminal.out().print(CheckText.json(path.toString(), finding, terminal.messages()));
      return code(problems);
    }
    terminal.report(problems);
    String kind = terminal.messages().text(finding.kind());
    long errors = problems.stream().filter(Problem::isError).count();
    terminal.say("check.summary", path.toString(), kind, errors, problems.size() - errors);
    return code(problems);
  }

  private static int code(List<Problem> problems) {
    boolean sound = problems.stream().noneMatch(Problem::isError);
    return (sound ? ExitCode.DONE : ExitCode.of(problems)).number();
  }
}
