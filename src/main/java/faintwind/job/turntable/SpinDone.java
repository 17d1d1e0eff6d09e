package faintwind.job.turntable;

import faintwind.calibration.beat.SpinTurns;
import faintwind.guide.turntable.DoneStep;
import faintwind.message.Problem;
import java.util.List;

/**
 * A spin of a live session.
 *
 * @param step when it was
 * @param turns its turns
 * @param doubts what should be looked at: taps missed or doubled, a count that does not go with the
 *     plan
 */
public record SpinDone(DoneStep step, SpinTurns turns, List<Problem> doubts) {
  public SpinDone {
    doubts = List.copyOf(doubts);
  }
}
