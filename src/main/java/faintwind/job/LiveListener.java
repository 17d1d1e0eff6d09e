package faintwind.job;

import faintwind.calibration.live.LiveRow;

/** Hears of a live recording while it is made; called on the recording's own thread. */
public interface LiveListener {
  /** A row that is in the file by now. */
  void row(LiveRow row);

  /** Something other than a row: a break, a lost connection, the end. */
  void happened(LiveNews news);
}
