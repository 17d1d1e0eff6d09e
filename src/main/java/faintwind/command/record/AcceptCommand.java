package faintwind.command.record;

import faintwind.message.Checked;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code faintwind accept FOLDER --place PLACE --because REASON}. */
@Command(name = "accept")
public final class AcceptCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Option(
      names = "--place",
      required = true,
      paramLabel = "PLACE",
      descriptionKey = "faintwind.accept.place")
  private String place = "";

  @Option(
      names = "--because",
      required = true,
      paramLabel = "REASON",
      descriptionKey = "faintwind.accept.because")
  private String because = "";

  public AcceptCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Checked<String> done = at.instrument(terminal).accept(place, because);
    if (!done.isOk()) {
      return terminal.refuse(done.problems());
    }
    terminal.say("accept.entered", place);
    return ExitCode.DONE.number();
  }
}
