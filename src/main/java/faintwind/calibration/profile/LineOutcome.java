package faintwind.calibration.profile;

import faintwind.calibration.live.LiveSample;
import faintwind.message.Problem;
import java.util.List;

/** What became of one line. */
public sealed interface LineOutcome {

  /**
   * A reading.
   *
   * @param sample what it says
   * @param notes values that cannot be and were left out
   * @param cells all cells of its line
   */
  record Row(LiveSample sample, List<Problem> notes, List<String> cells) implements LineOutcome {
    public Row {
      notes = List.copyOf(notes);
      cells = List.copyOf(cells);
    }
  }

  /** No reading, and none expected: header, comment, blank line. */
  record Skipped() implements LineOutcome {}

  /**
   * A line that does not fit the profile.
   *
   * @param problems every field of the profile that it does not fit
   */
  record Unreadable(List<Problem> problems) implements LineOutcome {
    public Unreadable {
      problems = List.copyOf(problems);
    }
  }
}
