package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import java.util.Optional;
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

  /**
   * Who does the work on a block once its rows were taken in. Each does its tasks in their order,
   * on one thread.
   *
   * @param smoothing smooths blocks
   * @param telling tells the speeds of smoothed blocks; rows and minutes are handed on from there
   */
  record Workers(Consumer<Runnable> smoothing, Consumer<Runnable> telling) {
    /** Whoever brings the rows. */
    public static final Workers NOBODY_ELSE = new Workers(Runnable::run, Runnable::run);
  }

  /** For a file: smoothed both ways over overlapping blocks, averages centred. */
  static SpeedEstimator smoothing(Calibration calibration, SpeedSettings settings) {
    return smoothing(calibration, settings, Optional.empty(), Workers.NOBODY_ELSE);
  }

  /** The same, handing on each minute as it is done. */
  static SpeedEstimator smoothing(
      Calibration calibration, SpeedSettings settings, Consumer<MinuteSpeed> minutes) {
    return smoothing(calibration, settings, Optional.of(minutes), Workers.NOBODY_ELSE);
  }

  /**
   * The same, leaving work on each block to somebody else.
   *
   * @param minutes who wants the minutes, if anybody
   */
  static SpeedEstimator smoothing(
      Calibration calibration,
      SpeedSettings settings,
      Optional<Consumer<MinuteSpeed>> minutes,
      Workers workers) {
    return new SmoothedSpeed(calibration, settings, minutes, workers);
  }

  /** For a live stream: past rows only, one row out for each row in at once. */
  static SpeedEstimator filtering(Calibration calibration, SpeedSettings settings) {
    return filtering(calibration, settings, Optional.empty());
  }

  /** The same, handing on each minute as it is done where somebody wants them. */
  static SpeedEstimator filtering(
      Calibration calibration, SpeedSettings settings, Optional<Consumer<MinuteSpeed>> minutes) {
    return new FilteredSpeed(calibration, settings, minutes);
  }
}
