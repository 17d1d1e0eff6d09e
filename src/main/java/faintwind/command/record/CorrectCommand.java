package faintwind.command.record;

import faintwind.message.Checked;
import faintwind.record.JournalEntry;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind correct FOLDER ENTRY --because REASON [--value VALUE]}. */
@Command(name = "correct")
public final class CorrectCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Parameters(index = "1", paramLabel = "ENTRY", descriptionKey = "faintwind.correct.entry")
  private String entry = "";

  @Option(
      names = "--because",
      required = true,
      paramLabel = "REASON",
      descriptionKey = "faintwind.correct.because")
  private String because = "";

  @Option(names = "--value", paramLabel = "VALUE", descriptionKey = "faintwind.correct.value")
  private @Nullable String value;

  public CorrectCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Checked<JournalEntry> done =
        at.instrument(terminal)
            .work(
                (view, enter) ->
                    value == null
                        ? enter.correct(entry, because, Optional.empty())
                        : enter.correctReading(entry, value, because));
    return terminal.end(done, it -> terminal.say("note.entered", it.id()));
  }
}
