package faintwind.calibration.fit.setup;

import faintwind.calibration.fit.numerics.Unknown;
import java.util.Map;

/**
 * The scatter between runs beyond what was stated of their speeds: a random effect whose size is
 * found by expectation and maximisation (Dempster, Laird and Rubin 1977). A run that is far off
 * gets the wider prior of Student's t with four degrees of freedom, so that it does not drag the
 * others.
 */
public final class RunScatter {
  /** Before any fit, relative. */
  public static final double FIRST = OwnChoices.FIRST_SCATTER;

  private RunScatter() {}

  /** Degrees of freedom of the scatter: the runs, and what the expectation is worth, less one. */
  public static double freedom(Setup setup) {
    return Math.max(1, setup.speedColumns().size() + OwnChoices.WORTH - 1);
  }

  /**
   * Settles the priors of the run speeds from a fit.
   *
   * @return the scatter found, relative
   */
  public static double settle(Setup setup, double[] values, double[][] covariance, double before) {
    double sum = OwnChoices.WORTH * OwnChoices.EXPECTED_SCATTER * OwnChoices.EXPECTED_SCATTER;
    double count = OwnChoices.WORTH;
    for (Map.Entry<String, Integer> run : setup.speedColumns().entrySet()) {
      if (!setup.counts(run.getKey())) {
        continue;
      }
      int i = run.getValue();
      double stated = setup.statedSpread(run.getKey());
      double spread = Math.hypot(stated, before);
      double squared = values[i] * values[i] + covariance[i][i];
      double weight = weight(values[i] * values[i] / (spread * spread));
      double own = before * before / (spread * spread);
      sum += weight * (own * squared * own + own * stated * stated);
      count += 1;
    }
    double scatter = Math.sqrt(sum / count);
    for (Map.Entry<String, Integer> run : setup.speedColumns().entrySet()) {
      if (!setup.counts(run.getKey())) {
        continue;
      }
      int i = run.getValue();
      double spread = Math.hypot(setup.statedSpread(run.getKey()), scatter);
      double weight = weight(values[i] * values[i] / (spread * spread));
      setup
          .unknowns()
          .replace(i, Unknown.linear("speed " + run.getKey(), 0, spread / Math.sqrt(weight)));
    }
    return scatter;
  }

  private static double weight(double squared) {
    return squared < OwnChoices.FREEDOM
        ? 1
        : (OwnChoices.FREEDOM + 1) / (OwnChoices.FREEDOM + squared);
  }
}
