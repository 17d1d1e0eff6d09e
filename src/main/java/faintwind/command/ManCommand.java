package faintwind.command;

import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code faintwind man [COMMAND]}: a page for the program man. */
@Command(
    name = "man",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class ManCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "COMMAND",
      descriptionKey = "faintwind.man.command")
  private @Nullable String command;

  @Spec private CommandSpec spec = CommandSpec.create();

  public ManCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    CommandLine root = spec.root().commandLine();
    CommandLine wanted = command == null ? root : root.getSubcommands().get(command);
    if (wanted == null) {
      String known = String.join(", ", root.getSubcommands().keySet());
      return terminal.misuse(
          Problem.error("usage.command-unknown", Where.NOWHERE, String.valueOf(command), known));
    }
    terminal.out().print(ManPage.of(wanted.getCommandSpec()));
    terminal.out().flush();
    return ExitCode.DONE.number();
  }
}
