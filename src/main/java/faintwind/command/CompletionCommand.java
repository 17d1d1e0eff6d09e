package faintwind.command;

import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code faintwind completion}: what a shell needs to complete commands and options. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class CompletionCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  public CompletionCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    terminal.out().print(AutoComplete.bash("faintwind", spec.root().commandLine()));
    terminal.out().flush();
    return ExitCode.DONE.number();
  }
}
