package faintwind.job.live;

import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;

/**
 * What a live recording came to.
 *
 * @param rows rows in the file
 * @param gaps breaks marked in it
 * @param unreadable lines that could not be read
 * @param leftOut values that cannot be and were left out
 * @param spread rows that had the whole second of the row before and were spread
 * @param doubled rows that had the very time of the row before and were left out
 */
public record LiveCount(
    long rows, long gaps, long unreadable, long leftOut, long spread, long doubled) {

  /** Where every value stands, and every time as it came. */
  LiveCount(long rows, long gaps, long unreadable) {
    this(rows, gaps, unreadable, 0, 0, 0);
  }

  /** What a person should know beside the numbers of rows, breaks and lines. */
  public List<Problem> notes(String file) {
    List<Problem> notes = new ArrayList<>();
    note(notes, "live.left-out", leftOut, file);
    note(notes, "live.spread", spread, file);
    note(notes, "live.doubled", doubled, file);
    return notes;
  }

  private static void note(List<Problem> notes, String id, long count, String file) {
    if (count > 0) {
      notes.add(Problem.warning(id, Where.file(file), String.valueOf(count)));
    }
  }
}
