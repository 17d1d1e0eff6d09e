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
   * @param notes values that no air can have and were left out
   */
  record Row(LiveSample sample, List<Problem> notes) implements LineOutcome {
    public Row {
      notes = List.copyOf(notes);
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
