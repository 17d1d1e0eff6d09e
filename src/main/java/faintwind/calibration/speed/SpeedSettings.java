package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.message.Field;

/**
 * How a log is to be converted.
 *
 * @param average_s averaging time of the speed, s; 0 for the estimator's own resolution
 * @param chosen whether a person chose it, not the instrument's noise
 * @param air air state for the whole log where the rows have none
 */
public record SpeedSettings(double average_s, boolean chosen, LogAir air) {
  public static final Field AVERAGE = Field.number("average_s", 0, 86_400);

  public SpeedSettings {
    AVERAGE.require(average_s);
  }

  /** With an averaging time that a person chose. */
  public SpeedSettings(double average_s, LogAir air) {
    this(average_s, true, air);
  }

  /** The averages that suit the instrument's noise. */
  public static SpeedSettings usual(Calibration calibration, LogAir air) {
    return new SpeedSettings(UsualAverage.of(calibration), false, air);
  }

  /** The averages that suit the instrument's noise, air from the rows. */
  public static SpeedSettings usual(Calibration calibration) {
    return usual(calibration, LogAir.UNKNOWN);
  }
}
