package faintwind.job.live;

import faintwind.calibration.live.LiveRow;
import faintwind.calibration.speed.SpeedRow;

/** Hears of a live recording while it is made; called on the recording's own thread. */
public interface LiveListener {
  /** A row that is in the file by now. */
  void row(LiveRow row);

  /** The air speed of the row told just before, where the recording has a calibration. */
  default void speed(LiveRow row, SpeedRow speed) {}

  /** Something other than a row: a break, a lost connection, the end. */
  void happened(LiveNews news);
}
