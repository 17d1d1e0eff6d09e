package faintwind.calibration.speed;

import faintwind.message.Field;

/**
 * How a log is to be converted.
 *
 * @param average_s averaging time of the speed, s; 0 for the estimator's own resolution
 * @param air air state for the whole log where the rows have none
 */
public record SpeedSettings(double average_s, LogAir air) {
  /** The default averaging time, s. */
  public static final double USUAL_AVERAGE_S = 30;

  public static final Field AVERAGE = Field.number("average_s", 0, 86_400);

  /** Averages of 30 s, air from the rows. */
  public static final SpeedSettings USUAL = new SpeedSettings(USUAL_AVERAGE_S, LogAir.UNKNOWN);

  public SpeedSettings {
    AVERAGE.require(average_s);
  }
}
