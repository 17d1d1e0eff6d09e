package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.calibration.fit.judging.FittedRecording;
import faintwind.calibration.run.Run;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.List;

/**
 * A fit to look at: the calibration and what it was drawn from. Only the calibration is written.
 *
 * @param calibration the calibration
 * @param shortfalls why it should be looked at before it is used; most often empty
 * @param look what it was drawn from; refused where its recordings are not at hand
 */
public record FittedFormula(
    Calibration calibration, List<Problem> shortfalls, Checked<FitLook> look) {
  public FittedFormula {
    shortfalls = List.copyOf(shortfalls);
  }

  /** The runs; empty where they are not at hand. */
  public List<Run> runs() {
    return look.fold((value, notes) -> value.runs(), problems -> List.of());
  }

  /** Measured and fitted signals; empty where they are not at hand. */
  public List<FittedRecording> recordings() {
    return look.fold((value, notes) -> value.recordings(), problems -> List.of());
  }
}
