package faintwind.calibration.fit.judging;

import faintwind.calibration.Evidence.Candidate;
import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.LeftOutRuns;
import java.util.List;

/**
 * The model chosen, and the others.
 *
 * @param fit of the chosen model
 * @param leftOut how well each moved run is foretold by the others
 * @param candidates all models tried, best first
 */
public record Choice(FitResult fit, List<LeftOut> leftOut, List<Candidate> candidates) {
  public Choice {
    leftOut = List.copyOf(leftOut);
    candidates = List.copyOf(candidates);
  }

  /** A single model, without leave-one-out. */
  public static Choice only(FitResult fit) {
    return new Choice(fit, List.of(), List.of(new Candidate(fit.model(), fit.deviance(), 0, true)));
  }

  /** The same with this fit of the model chosen. */
  public Choice with(FitResult other) {
    return new Choice(other, LeftOutRuns.of(other), candidates);
  }
}
