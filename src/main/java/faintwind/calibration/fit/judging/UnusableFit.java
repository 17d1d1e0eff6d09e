package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.health.DataCheck;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.fit.solving.ResidualReport;
import faintwind.calibration.fit.solving.RunOutcomes;
import faintwind.calibration.run.RunSet;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;

/** Fits that no calibration can stand on: the data contradict the physics of the instrument. */
final class UnusableFit {
  private UnusableFit() {}

  static List<Problem> of(FitResult fit, RunSet set) {
    List<Problem> found = new ArrayList<>();
    double residual = ResidualReport.of(fit).rms() / fit.setting().largest();
    if (residual > OwnChoices.MOST_RESIDUAL) {
      found.add(
          Problem.error(
              "fit.contradicts-physics", Where.NOWHERE, SignalCheck.text(100 * residual)));
    }
    double speed = middleSpeed_m_s(fit, set);
    double u95 = Verdict.u95_m_s(fit, speed) / speed;
    if (!(u95 < OwnChoices.MOST_U95)) {
      found.add(
          Problem.error(
              "fit.nothing-learnt",
              Where.NOWHERE,
              SignalCheck.text(100 * u95),
              SignalCheck.text(speed)));
    }
    int moved = fit.setup().speedColumns().size();
    int contradicting = LeftOutRuns.contradicting(fit).size();
    if (moved >= 3 && contradicting > OwnChoices.MOST_CONTRADICTING * moved) {
      found.add(
          Problem.error(
              "fit.runs-contradict",
              Where.NOWHERE,
              String.valueOf(contradicting),
              String.valueOf(moved)));
    }
    return found;
  }

  private static double middleSpeed_m_s(FitResult fit, RunSet set) {
    double logs =
        set.runs().stream()
            .filter(DataCheck::moves)
            .mapToDouble(r -> Math.log(RunOutcomes.airSpeed_m_s(fit, r)))
            .average()
            .orElse(0);
    return Math.exp(logs);
  }
}
