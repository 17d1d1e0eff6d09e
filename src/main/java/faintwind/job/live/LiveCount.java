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
 */
public record LiveCount(long rows, long gaps, long unreadable, long leftOut, long spread) {

  /** Where every value stands, and every time as it came. */
  LiveCount(long rows, long gaps, long unreadable) {
    this(rows, gaps, unreadable, 0, 0);
  }

  /** What a person should know beside the numbers of rows, breaks and lines. */
  public List<Problem> notes(String file) {
    List<Problem> notes = new ArrayList<>();
    if (leftOut > 0) {
      notes.add(Problem.warning("live.left-out", Where.file(file), String.valueOf(leftOut)));
    }
    if (spread > 0) {
      notes.add(Problem.warning("live.spread", Where.file(file), String.valueOf(spread)));
    }
    return notes;
  }
}
