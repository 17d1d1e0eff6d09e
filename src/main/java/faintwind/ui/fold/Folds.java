package faintwind.ui.fold;

import java.util.Arrays;

/**
 * How far something is folded: from 0, all beside one another, step by step. It folds on where it
 * needs more room than there is, and comes back where there is again what the step before needed.
 * What is folded may need less than it did, so that a need is only asked while its step is shown.
 */
public final class Folds {
  private final double[] needed_px;
  private int step;

  /** Not folded yet. */
  public Folds(int steps) {
    needed_px = new double[steps];
  }

  public int step() {
    return step;
  }

  /** What it holds, or the size of its words, changed: begins again. */
  public void restart() {
    step = 0;
    Arrays.fill(needed_px, 0);
  }

  /** There is another width now; tells whether it came back by a step or more. */
  public boolean widened(double room_px) {
    int was = step;
    while (step > 0 && room_px >= needed_px[step - 1]) {
      step--;
    }
    return step != was;
  }

  /** What the step that is shown needs; tells whether it folded by one. */
  public boolean needs(double need_px, double room_px) {
    if (step == needed_px.length || need_px <= room_px + 0.5) {
      return false;
    }
    needed_px[step] = need_px;
    step++;
    return true;
  }
}
