package faintwind.job;

import faintwind.calibration.Calibration;
import faintwind.calibration.Run;
import faintwind.calibration.fit.FittedRecording;
import faintwind.calibration.fit.StraightLineLook;
import faintwind.message.Problem;
import java.util.List;
import java.util.Optional;

/**
 * A fit to look at: the calibration and what it was drawn from. Only the calibration is written.
 *
 * @param calibration the calibration
 * @param shortfalls why it should be looked at before it is used; most often empty
 * @param runs the runs
 * @param recordings measured and fitted signals; empty where a calibration was only read again
 * @param straightLine the straight-line look; empty where a calibration was only read again
 */
public record FittedFormula(
    Calibration calibration,
    List<Problem> shortfalls,
    List<Run> runs,
    List<FittedRecording> recordings,
    Optional<StraightLineLook> straightLine) {
  public FittedFormula {
    shortfalls = List.copyOf(shortfalls);
    runs = List.copyOf(runs);
    recordings = List.copyOf(recordings);
  }
}
