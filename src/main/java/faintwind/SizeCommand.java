package faintwind;

import faintwind.job.SheetText;
import faintwind.job.Size;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind size DESIGN.json [--json]}. */
@Command(
    name = "size",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
final class SizeCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "DESIGN.json", descriptionKey = "faintwind.size.design")
  private Path design = Path.of("");

  @Option(names = "--json", descriptionKey = "faintwind.size.json")
  private boolean json;

  SizeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Checked<Size.Sized> sized = Size.run(design);
    if (!(sized instanceof Checked.Ok<Size.Sized> ok)) {
      return terminal.refuse(sized.problems());
    }
    terminal.report(ok.notes());
    if (json) {
      terminal.out().print(SheetText.json(ok.value(), terminal.messages()));
    } else {
      SheetText.lines(ok.value(), terminal.messages()).forEach(terminal.out()::println);
    }
    terminal.out().flush();
    terminal.report(ok.value().sheet().reasons());
    return ok.value().sheet().stops() ? ExitCode.LIMIT.number() : ExitCode.DONE.number();
  }
}
