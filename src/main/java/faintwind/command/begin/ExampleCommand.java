package faintwind.command.begin;

import faintwind.command.StandardOptions;
import faintwind.job.WriteExample;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind example runs|design|log|profile|points|places [--out FILE]}. */
@Command(name = "example")
public final class ExampleCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "KIND", descriptionKey = "faintwind.example.kind")
  private WriteExample.Kind kind = WriteExample.Kind.RUNS;

  @Option(names = "--out", paramLabel = "FILE", descriptionKey = "faintwind.example.out")
  private @Nullable Path out;

  @Mixin private StandardOptions common = new StandardOptions();

  public ExampleCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (out == null) {
      terminal.out().print(WriteExample.text(kind));
      terminal.out().flush();
      return ExitCode.DONE.number();
    }
    Optional<Problem> trouble = common.output(out).trouble(List.of());
    if (trouble.isPresent()) {
      return terminal.misuse(trouble.get());
    }
    WriteExample.write(kind, out);
    terminal.say("example.written", out.toString(), kind.word());
    return ExitCode.DONE.number();
  }
}
