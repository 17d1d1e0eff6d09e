package faintwind.command.record;

import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.step.EnterInStep;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind reading FOLDER STEP READING VALUE}, or {@code --from LOG.csv}. */
@Command(name = "reading")
public final class ReadingCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Parameters(index = "1", paramLabel = "STEP", descriptionKey = "faintwind.reading.step")
  private String step = "";

  @Parameters(index = "2", paramLabel = "READING", descriptionKey = "faintwind.reading.reading")
  private String reading = "";

  @Parameters(
      index = "3",
      arity = "0..1",
      paramLabel = "VALUE",
      descriptionKey = "faintwind.reading.value")
  private @Nullable String value;

  @Option(names = "--from", paramLabel = "LOG.csv", descriptionKey = "faintwind.reading.from")
  private @Nullable Path recording;

  public ReadingCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if ((value == null) == (recording == null)) {
      return terminal.misuse(Problem.error("reading.no-value", Where.NOWHERE, ""));
    }
    Checked<JournalEntry> entered = at.instrument(terminal).work(this::enter);
    if (!(entered instanceof Checked.Ok<JournalEntry> ok)) {
      return terminal.refuse(entered.problems());
    }
    terminal.report(ok.notes());
    if (!ok.notes().isEmpty()) {
      terminal.say("reading.void", typed(ok.value()), ok.value().id());
      return ExitCode.LIMIT.number();
    }
    Optional<ReadingVerdict> verdict =
        ok.value().event() instanceof ReadingEntered made ? made.verdict() : Optional.empty();
    String words = verdict.map(v -> "verdict." + v.word()).orElse("reading.not-judged");
    terminal.say(
        "reading.entered", typed(ok.value()), terminal.messages().text(words), ok.value().id());
    return verdict.filter(v -> v != ReadingVerdict.GOOD).isPresent()
        ? ExitCode.LIMIT.number()
        : ExitCode.DONE.number();
  }

  private Checked<JournalEntry> enter(InstrumentView view, Enter enter) throws IOException {
    return recording == null
        ? enter.reading(step, reading, String.valueOf(value))
        : new EnterInStep(view, enter, terminal.messages())
            .reading(step, reading, recording, OffsetDateTime.now(InstrumentOptions.clock()));
  }

  private static String typed(JournalEntry entry) {
    return entry.event() instanceof ReadingEntered made ? made.typed() : "";
  }
}
