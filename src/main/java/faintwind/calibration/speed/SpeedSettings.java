package faintwind.calibration.speed;

import faintwind.calibration.Calibration;

/**
 * How a log is to be converted.
 *
 * @param average_s averaging time of the speed, s; 0 for the estimator's own resolution
 * @param chosen whether a person chose it, not the instrument's noise
 * @param air air state for the whole log where the rows have none
 */
public record SpeedSettings(double average_s, boolean chosen, LogAir air) {
  /** The longest averaging time, s. */
  public static final double LONGEST_S = 86_400;

  public SpeedSettings {
    if (!isAllowed(average_s)) {
      throw new IllegalArgumentException("average_s = " + average_s + ", allowed 0 to 86400");
    }
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

  /** Whether speeds can be averaged over a time. */
  public static boolean isAllowed(double average_s) {
    return average_s >= 0 && average_s <= LONGEST_S;
  }
}
