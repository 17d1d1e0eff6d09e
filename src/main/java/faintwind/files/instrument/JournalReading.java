package faintwind.files.instrument;

import faintwind.files.instrument.ChainedLines.Line;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.AlterationAccepted;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the bytes of a journal say, compared with what the folder's summary knows of them. The
 * summary is written after the journal: one that knows fewer lines is behind and no problem, one
 * that knows more tells of lines that were lost.
 */
final class JournalReading {
  /** How every line begins: what a crash leaves of one is a beginning of such a line. */
  private static final String BEGINNING = "{\"id\":\"";

  private final Seal seal;
  private final Where here;
  private final List<JournalEntry> entries = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();
  private ChainedLines whole = new ChainedLines(List.of(), "");

  private JournalReading(Seal seal, Where here) {
    this.seal = seal;
    this.here = here;
  }

  static JournalReading of(byte[] bytes, Seal seal, String name) {
    JournalReading reading = new JournalReading(seal, Where.file(name));
    ChainedLines lines = ChainedLines.of(bytes);
    if (isUtf16(bytes)) {
      reading.whole = lines;
      reading.problems.add(Problem.error("journal.utf-16", reading.here, ""));
    } else {
      reading.whole = reading.read(lines);
    }
    return reading;
  }

  /** By its byte order mark (The Unicode Standard, 23.8); none of its lines can be read. */
  private static boolean isUtf16(byte[] bytes) {
    return bytes.length > 1
        && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
            || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF));
  }

  /** Every line that is an entry. */
  List<JournalEntry> entries() {
    return entries;
  }

  /** All that is wrong. */
  List<Problem> problems() {
    return problems;
  }

  /** Every line but a last one that was cut off. */
  ChainedLines whole() {
    return whole;
  }

  private ChainedLines read(ChainedLines all) {
    ChainedLines lines = all;
    int number = 0;
    for (Line line : all.lines()) {
      number++;
      if (!entry(line, here.atLine(number))) {
        lines = all.withoutLast();
      }
    }
    end(lines);
    for (JournalEntry entry : entries) {
      accept(entry.event(), lines);
    }
    return lines;
  }

  /** A line whose alteration a person accepted is told of, and stands in nobody's way. */
  private void accept(Event event, ChainedLines lines) {
    if (!(event instanceof AlterationAccepted accepted)) {
      return;
    }
    for (int i = 0; i < lines.lines().size(); i++) {
      Where where = here.atLine(i + 1);
      boolean meant =
          accepted.place().equals(where.file().orElse("") + ":" + (i + 1))
              && accepted.sha256().equals(lines.lines().get(i).sha256());
      if (meant && problems.removeIf(p -> p.isError() && p.where().line().equals(where.line()))) {
        problems.add(Problem.warning("journal.accepted", where, accepted.reason()));
      }
    }
  }

  /** Takes a line in; false where it is a last line cut off. */
  private boolean entry(Line line, Where where) {
    Checked<JournalEntry> read = JournalLine.read(line.raw(), where);
    if (read instanceof Checked.Ok<JournalEntry> ok) {
      if (!ids.add(ok.value().id())) {
        problems.add(Problem.error("journal.id-twice", where.atColumn("id"), ok.value().id()));
      }
      entries.add(ok.value());
      return true;
    }
    if (line.ended()) {
      if (!line.text().isBlank()) {
        problems.addAll(read.problems());
      }
      return true;
    }
    String text = JournalRules.shortened(line.text());
    boolean begun = line.text().startsWith(BEGINNING) || BEGINNING.startsWith(line.text());
    problems.add(
        begun
            ? Problem.warning("journal.torn", where, text)
            : Problem.error("journal.added", where, text));
    return false;
  }

  /** Compares the end of the journal with what the summary knows. */
  private void end(ChainedLines lines) {
    int count = lines.lines().size();
    boolean lost = seal.head().isPresent() && seal.lines() > count && !lines.has(seal.head().get());
    boolean last = seal.lines() == count;
    problems.addAll(lines.problems(here, last ? seal.head() : Optional.empty()));
    if (lost) {
      problems.add(
          Problem.error(
              "journal.shorter",
              here,
              String.valueOf(seal.lines() - count),
              String.valueOf(seal.lines()),
              seal.head().get()));
    }
    if (count > 0
        && !lines.lines().get(count - 1).ended()
        && seal.head().equals(Optional.of(lines.head()))) {
      problems.add(Problem.error("journal.line-end-lost", here.atLine(count), ""));
    }
  }
}
