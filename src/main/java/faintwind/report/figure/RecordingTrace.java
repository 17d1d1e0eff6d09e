package faintwind.report.figure;

import faintwind.calibration.run.Series;
import java.util.List;
import java.util.Optional;

/**
 * One recording as it is drawn: what was measured and, after a fit, what the formula says.
 *
 * @param name run file or run, as the table names it
 * @param unit unit symbol of the signal
 * @param measured the signal
 * @param fitted the signal of the fitted formula at the same or other times
 * @param spins when the arm turned, with the speed to write over it
 * @param aside what a person left out of the fit, with the reason
 */
public record RecordingTrace(
    String name,
    String unit,
    Series measured,
    Optional<Series> fitted,
    List<Spin> spins,
    List<Spin> aside) {
  public RecordingTrace {
    spins = List.copyOf(spins);
    aside = List.copyOf(aside);
  }

  /**
   * One turning of the arm.
   *
   * @param from_s start on the file's clock
   * @param to_s end
   * @param label speed in m/s or the run's name
   */
  public record Spin(double from_s, double to_s, String label) {}
}
