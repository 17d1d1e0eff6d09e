package faintwind.calibration.speed;

/**
 * Air speed of one minute of a log.
 *
 * @param from_s its first moment on the log's clock, a whole number of minutes
 * @param rows how many rows of the log lie in it
 * @param speed mean of the speeds without averaging, its expanded uncertainty and flags
 */
public record MinuteSpeed(double from_s, int rows, SpeedRow speed) {
  /** How long a minute is, s. */
  public static final double LENGTH_S = 60;
}
