package faintwind.calibration;

import faintwind.message.Problem;
import java.util.List;

/**
 * One calibration of one instrument, as the calibration file carries it.
 *
 * @param origin whose, when, by which program, from which files
 * @param signal what the numbers of a log are
 * @param formula the fitted formula with its covariance
 * @param coverage what the runs covered
 * @param evidence how well it stands: residuals, runs, runners-up
 * @param performance what it can do in use
 * @param warnings what a person should know
 */
public record Calibration(
    Origin origin,
    SignalPath signal,
    FormulaFit formula,
    Coverage coverage,
    Evidence evidence,
    Performance performance,
    List<Problem> warnings) {
  public Calibration {
    warnings = List.copyOf(warnings);
  }
}
