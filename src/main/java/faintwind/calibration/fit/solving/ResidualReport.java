package faintwind.calibration.fit.solving;

import faintwind.calibration.Evidence.ResidualStatistics;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.wander.Whitening;

/** Residuals of all recordings in numbers. */
public final class ResidualReport {
  private ResidualReport() {}

  public static ResidualStatistics of(FitResult fit) {
    RunProblem problem = fit.problem();
    double squares = 0;
    double slow = 0;
    double rate = 0;
    double effective = 0;
    int rows = 0;
    for (int k = 0; k < problem.tracks().size(); k++) {
      Track.Rows own = problem.tracks().get(k).rows;
      double[] residuals = problem.residuals(k);
      Whitening.Course course = problem.course(k);
      for (int i = 0; i < residuals.length; i++) {
        if (own.leftOut[i]) {
          continue;
        }
        double noise = own.sd[i] * fit.solution().wander().white();
        squares += residuals[i] * residuals[i];
        slow += Math.max(0, residuals[i] * residuals[i] - noise * noise);
        rate += course.rate_1_s[i];
        rows++;
      }
      effective += effective(own, course, problem.whitening(k));
    }
    return new ResidualStatistics(
        Math.sqrt(squares / rows),
        fit.setting().noise(),
        Math.sqrt(slow / rows),
        rows / rate,
        Math.max(1, effective),
        rows);
  }

  /**
   * Sum of (1 − r)/(1 + r) with r the correlation of a row's residual with that before it: the rows
   * of a first-order process with white noise on it are worth that many independent ones.
   */
  private static double effective(Track.Rows rows, Whitening.Course course, Whitening whitening) {
    double sum = 1;
    for (int i = 1; i < rows.size(); i++) {
      double h = rows.time_s[i] - rows.time_s[i - 1];
      double together = Math.exp(-course.rate_1_s[i] * h) * whitening.gain(i - 1);
      sum += (1 - together) / (1 + together);
    }
    return sum;
  }
}
