package faintwind.command.record;

import faintwind.job.record.PutInForce;
import faintwind.message.Checked;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind put-in-force FOLDER [CALIBRATION]}. */
@Command(name = "put-in-force")
public final class PutInForceCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "CALIBRATION",
      descriptionKey = "faintwind.put-in-force.file")
  private @Nullable String file;

  @Option(names = "--reason", paramLabel = "TEXT", descriptionKey = "faintwind.put-in-force.reason")
  private @Nullable String reason;

  public PutInForceCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Checked<String> done =
        at.instrument(terminal)
            .work(
                (view, enter) ->
                    new PutInForce(view, enter)
                        .put(Optional.ofNullable(file), Optional.ofNullable(reason)));
    return terminal.end(done, it -> terminal.say("put-in-force.done", it));
  }
}
