package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import java.util.function.Consumer;

/**
 * Turns the rows of one log into air speed. The state (difference, resistor, bead, loss) is
 * estimated with the heat balance as model by an extended Kalman filter (Kalman 1960; Jazwinski
 * 1970) in which the logarithm of the loss walks at random with a strength of greatest likelihood;
 * the speed follows from the loss by the calibrated formula in the log's own air.
 *
 * <p>Exactly one {@link SpeedRow} comes out for each row that goes in, in the same order. For one
 * log and one thread.
 */
public sealed interface SpeedEstimator permits SmoothedSpeed, FilteredSpeed {

  /** Takes the next row; hands on whatever rows are ready. */
  void accept(LogSample sample, Consumer<SpeedRow> ready);

  /** No row follows: hands on the rest. */
  void finish(Consumer<SpeedRow> ready);

  /** For a file: smoothed both ways over overlapping blocks, averages centred. */
  static SpeedEstimator smoothing(Calibration calibration, SpeedSettings settings) {
    return smoothing(calibration, settings, minute -> {});
  }

  /** The same, handing on each minute as it is done. */
  static SpeedEstimator smoothing(
      Calibration calibration, SpeedSettings settings, Consumer<MinuteSpeed> minutes) {
    return new SmoothedSpeed(calibration, settings, minutes);
  }

  /**
   * The same, leaving the second half of the work on each block to somebody else.
   *
   * @param later does tasks in their order, on one thread; rows and minutes are handed on from
   *     there
   */
  static SpeedEstimator smoothing(
      Calibration calibration,
      SpeedSettings settings,
      Consumer<MinuteSpeed> minutes,
      Consumer<Runnable> later) {
    return new SmoothedSpeed(calibration, settings, minutes).leaving(later);
  }

  /** For a live stream: past rows only, one row out for each row in at once. */
  static SpeedEstimator filtering(Calibration calibration, SpeedSettings settings) {
    return filtering(calibration, settings, minute -> {});
  }

  /** The same, handing on each minute as it is done. */
  static SpeedEstimator filtering(
      Calibration calibration, SpeedSettings settings, Consumer<MinuteSpeed> minutes) {
    return new FilteredSpeed(calibration, settings, minutes);
  }
}
