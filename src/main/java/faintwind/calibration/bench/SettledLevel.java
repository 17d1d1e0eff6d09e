package faintwind.calibration.bench;

import faintwind.calibration.run.Series;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;

/**
 * The level at which a recording with the heater on has come to rest: the mean of its last five
 * minutes. What is left to go follows from the slope there, slope · τ, since the rest of a warm-up
 * fades as exp(−t/τ); a recording with more than a hundredth left is refused and told how long to
 * wait, τ ln(left / a hundredth).
 *
 * @param mean of the last five minutes, in the signal's own unit
 */
public record SettledLevel(double mean) {
  /** The end of the recording that is looked at, s (own choice). */
  public static final double END_S = 300;

  private static final double LEFT = 0.01;
  private static final int LEAST_ROWS = 5;

  /**
   * The level of a recording; refused where it is too short or still on its way.
   *
   * @param signal the recording
   * @param constant_s time constant τ of the instrument in still air, s
   */
  public static Checked<SettledLevel> in(Series signal, double constant_s) {
    double length_s = signal.isEmpty() ? 0 : signal.last_s() - signal.first_s();
    Series end =
        signal.isEmpty() ? signal : signal.window(signal.last_s() - END_S, signal.last_s());
    if (length_s < END_S || end.size() < LEAST_ROWS) {
      return Checked.refused(
          Problem.error(
              "bench.level-too-short",
              Where.NOWHERE,
              String.valueOf(Math.round(length_s)),
              String.valueOf(end.size()),
              String.valueOf(Math.round(END_S)),
              String.valueOf(LEAST_ROWS)));
    }
    double left = Math.abs(StraightLine.through(end).slope_per_s()) * constant_s;
    double most = LEFT * Math.abs(end.mean());
    if (left > most) {
      double wait_s = constant_s * Math.log(left / most);
      return Checked.refused(
          Problem.error(
              "bench.not-settled",
              Where.NOWHERE,
              Numerals.digits(100 * left / Math.abs(end.mean())),
              String.valueOf(Math.max(1, Math.round(wait_s / 60)))));
    }
    return Checked.ok(new SettledLevel(end.mean()));
  }
}
