package faintwind.calibration;

import faintwind.calibration.run.SignalPath;
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
  /** Id of the note that a run file or a calibration comes from the virtual instrument. */
  public static final String REHEARSAL = "file.rehearsal";

  public Calibration {
    warnings = List.copyOf(warnings);
  }

  /** Whether it comes from a rehearsal: then it may be looked at, and nothing else. */
  public boolean rehearsal() {
    return warnings.stream().anyMatch(w -> w.id().equals(REHEARSAL));
  }
}
