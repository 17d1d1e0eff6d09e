package faintwind.files.instrument;

import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.JournalEntry;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Times of a journal that go backwards: the order of its lines is the order in which they were
 * made, so a computer's clock was wrong before or after.
 */
final class JournalTimes {
  /** Two computers, or one before and after it asked for the time, differ by less. Own choice. */
  private static final Duration APART = Duration.ofMinutes(5);

  private JournalTimes() {}

  /** A warning for each entry that is dated before one that stands above it. */
  static List<Problem> problems(List<JournalEntry> entries) {
    List<Problem> problems = new ArrayList<>();
    if (entries.isEmpty()) {
      return problems;
    }
    OffsetDateTime before = entries.get(0).at();
    for (JournalEntry entry : entries) {
      if (entry.at().plus(APART).isBefore(before)) {
        problems.add(
            Problem.warning(
                "journal.time-back",
                Where.file("journal.jsonl"),
                entry.id(),
                entry.at().toString(),
                before.toString()));
      }
      before = entry.at();
    }
    return problems;
  }
}
