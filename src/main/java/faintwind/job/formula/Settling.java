package faintwind.job.formula;

import faintwind.calibration.fit.judging.MonteCarlo;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.job.JobWatch;
import org.apache.commons.math3.stat.descriptive.moment.Variance;

/**
 * How the uncertainty by refits settles while they are made: that of one speed, as a share of the
 * fit's own. Thread-safe.
 */
final class Settling {
  private static final double SPEED_M_S = 0.5;

  /** Fewer draws say nothing of their spread. */
  private static final int LEAST = 4;

  private static final int EVERY = 4;

  private final FitResult fit;
  private final JobWatch watch;
  private final double u_m_s;
  private final Variance variance = new Variance();

  Settling(FitResult fit, JobWatch watch) {
    this.fit = fit;
    this.watch = watch;
    u_m_s = MonteCarlo.byCovariance_m_s(fit, SPEED_M_S);
  }

  /** One more refit. */
  void draw(double[] values) {
    double speed_m_s = MonteCarlo.speed_m_s(fit, values, SPEED_M_S);
    synchronized (this) {
      variance.increment(speed_m_s);
      long drawn = variance.getN();
      if (drawn >= LEAST && drawn % EVERY == 0) {
        watch.settles(drawn, Math.sqrt(variance.getResult()) / u_m_s);
      }
    }
  }
}
