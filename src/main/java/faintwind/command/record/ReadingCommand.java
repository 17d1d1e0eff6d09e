package faintwind.command.record;

import faintwind.message.Checked;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code faintwind reading FOLDER STEP READING VALUE}. */
@Command(name = "reading")
public final class ReadingCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Parameters(index = "1", paramLabel = "STEP", descriptionKey = "faintwind.reading.step")
  private String step = "";

  @Parameters(index = "2", paramLabel = "READING", descriptionKey = "faintwind.reading.reading")
  private String reading = "";

  @Parameters(index = "3", paramLabel = "VALUE", descriptionKey = "faintwind.reading.value")
  private String value = "";

  public ReadingCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Checked<JournalEntry> entered =
        at.instrument().work((view, enter) -> enter.reading(step, reading, value));
    if (!(entered instanceof Checked.Ok<JournalEntry> ok)) {
      return terminal.refuse(entered.problems());
    }
    terminal.report(ok.notes());
    if (!ok.notes().isEmpty()) {
      terminal.say("reading.void", value, ok.value().id());
      return ExitCode.LIMIT.number();
    }
    Optional<ReadingVerdict> verdict =
        ok.value().event() instanceof ReadingEntered made ? made.verdict() : Optional.empty();
    String words = verdict.map(v -> "verdict." + v.word()).orElse("reading.not-judged");
    terminal.say("reading.entered", value, terminal.messages().text(words), ok.value().id());
    return verdict.filter(v -> v != ReadingVerdict.GOOD).isPresent()
        ? ExitCode.LIMIT.number()
        : ExitCode.DONE.number();
  }
}
