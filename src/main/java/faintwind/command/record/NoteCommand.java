package faintwind.command.record;

import faintwind.job.record.BeginInstrument;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.KeepRuns;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.JournalEntry;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind note FOLDER TEXT}: free text, or with one of the options a part, a photo, a
 * file, runs, a design, a meter, a repair, a hand-over or the end of an instrument; the text then
 * says more.
 */
@Command(name = "note")
public final class NoteCommand implements Callable<Integer> {
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

  private final Terminal terminal;

  @Mixin private InstrumentOptions at = new InstrumentOptions();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "TEXT",
      descriptionKey = "faintwind.note.text")
  private String text = "";

  @Option(names = "--step", paramLabel = "STEP", descriptionKey = "faintwind.note.step")
  private @Nullable String step;

  @Option(names = "--part", paramLabel = "PART", descriptionKey = "faintwind.note.part")
  private @Nullable String part;

  @Option(names = "--lot", paramLabel = "LOT", descriptionKey = "faintwind.note.lot")
  private String lot = "";

  @Option(names = "--price", paramLabel = "PRICE", descriptionKey = "faintwind.note.price")
  private @Nullable Double price;

  @Option(names = "--currency", paramLabel = "CODE", descriptionKey = "faintwind.note.currency")
  private String currency = "";

  @Option(names = "--photo", paramLabel = "FILE", descriptionKey = "faintwind.note.photo")
  private @Nullable Path photo;

  @Option(names = "--file", paramLabel = "FILE", descriptionKey = "faintwind.note.file")
  private @Nullable Path file;

  @Option(names = "--runs", paramLabel = "RUNS.csv", descriptionKey = "faintwind.note.runs")
  private @Nullable Path runs;

  @Option(names = "--design", paramLabel = "DESIGN.json", descriptionKey = "faintwind.note.design")
  private @Nullable Path design;

  @Option(names = "--repair", descriptionKey = "faintwind.note.repair")
  private boolean repair;

  @Option(names = "--hand-over", paramLabel = "NAME", descriptionKey = "faintwind.note.hand-over")
  private @Nullable String handOver;

  @Option(names = "--meter", paramLabel = "CLASS", descriptionKey = "faintwind.note.meter")
  private @Nullable String meter;

  @Option(names = "--retire", descriptionKey = "faintwind.note.retire")
  private boolean retire;

  public NoteCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Optional<Problem> misuse = misuse();
    if (misuse.isPresent()) {
      return terminal.misuse(misuse.get());
    }
    Path chosen = design;
    Checked<JournalEntry> entered =
        chosen == null
            ? at.instrument(terminal).work(this::enter)
            : new BeginInstrument(InstrumentOptions.clock(), at.who())
                .choose(at.folder(), chosen, text);
    return terminal.end(entered, it -> terminal.say("note.entered", it.id()));
  }

  private Checked<JournalEntry> enter(InstrumentView view, Enter enter) throws IOException {
    if (meter != null) {
      return enter.meter(meter);
    } else if (repair) {
      return enter.repair(String.valueOf(step), text);
    } else if (photo != null) {
      return enter.photo(String.valueOf(step), photo, text);
    } else if (file != null) {
      return enter.file(Event.FileRole.OTHER, file);
    } else if (runs != null) {
      return KeepRuns.keep(view.path(), runs, enter);
    }
    return enter.plain(Optional.ofNullable(step), event());
  }

  private Event event() {
    if (part != null) {
      OptionalDouble paid = price == null ? OptionalDouble.empty() : OptionalDouble.of(price);
      return new Event.PartRecorded(part, lot, paid, currency);
    } else if (handOver != null) {
      return new Event.HandedOver(handOver, text);
    }
    return retire ? new Event.Retired(text) : new Event.NoteWritten(text);
  }

  private Optional<Problem> misuse() {
    List<String> kinds =
        Stream.of(
                part == null ? null : "--part",
                photo == null ? null : "--photo",
                file == null ? null : "--file",
                runs == null ? null : "--runs",
                design == null ? null : "--design",
                repair ? "--repair" : null,
                handOver == null ? null : "--hand-over",
                meter == null ? null : "--meter",
                retire ? "--retire" : null)
            .filter(Objects::nonNull)
            .toList();
    if (kinds.size() > 1) {
      return Optional.of(problem("note.too-many", String.join(", ", kinds)));
    }
    if (price != null && !(price >= 0 && Double.isFinite(price))) {
      return Optional.of(problem("note.price", String.valueOf(price)));
    }
    if (!currency.isEmpty() && !CURRENCY.matcher(currency).matches()) {
      return Optional.of(problem("note.currency", currency));
    }
    boolean wordless = part != null || photo != null || file != null || runs != null;
    if (text.isBlank() && handOver == null && meter == null && !wordless) {
      return Optional.of(problem("note.no-text", ""));
    }
    boolean ofStep = repair || photo != null;
    return ofStep && step == null ? Optional.of(problem("note.no-step", "")) : Optional.empty();
  }

  private static Problem problem(String id, String found) {
    return Problem.error(id, Where.NOWHERE, found);
  }
}
