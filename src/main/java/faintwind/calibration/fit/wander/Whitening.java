package faintwind.calibration.fit.wander;

import faintwind.calibration.fit.track.Track;

/**
 * Turns the correlated residuals of one track into independent ones of unit variance.
 *
 * <p>The loss wanders, the ball integrates that: the residual e is a first-order process, de/dt =
 * −λ e + loss · Δ · w(t), with λ the ball's own rate, and every row adds its own white noise. The
 * whitened residuals are the innovations of a scalar Kalman filter over their standard deviations
 * (Kalman 1960); the filter is linear in the residuals, so that the Jacobian goes through it as
 * well. In this way slow draught and misfit set the uncertainty, not the number of rows.
 */
public final class Whitening {
  private final double[] keep;
  private final double[] gain;
  private final double[] scale;
  private final double[] sd;
  private final double logDeterminant;

  private Whitening(
      double[] keep, double[] gain, double[] scale, double[] sd, double logDeterminant) {
    this.keep = keep;
    this.gain = gain;
    this.scale = scale;
    this.sd = sd;
    this.logDeterminant = logDeterminant;
  }

  /**
   * The filter of a track.
   *
   * @param rows its rows with their weights
   * @param course what the fit says of the ball at the rows
   * @param wander strength of the wandering
   */
  public static Whitening of(Track.Rows rows, Course course, Wander wander) {
    int n = rows.size();
    double[] keep = decays(rows, course);
    double[] gain = new double[n];
    double[] scale = new double[n];
    double[] sd = new double[n];
    double variance = 0;
    double logs = 0;
    for (int i = 0; i < n; i++) {
      double rate = course.rate_1_s[i];
      double decay = keep[i];
      double drive = course.drive(i, wander) * rows.wildness[i];
      variance = variance * decay * decay + drive * (1 - decay * decay) / (2 * rate);
      double white = rows.sd[i] * wander.white();
      double total = variance + white * white;
      sd[i] = Math.sqrt(total);
      if (rows.leftOut[i]) {
        continue;
      }
      gain[i] = variance / total;
      scale[i] = 1 / sd[i];
      variance *= 1 - gain[i];
      logs += Math.log(total);
    }
    return new Whitening(keep, gain, scale, sd, logs);
  }

  /** What is left at each row of the residual of the row before, whatever the wandering. */
  static double[] decays(Track.Rows rows, Course course) {
    double[] decays = new double[rows.size()];
    for (int i = 0; i < decays.length; i++) {
      double h = i == 0 ? 0 : rows.time_s[i] - rows.time_s[i - 1];
      decays[i] = Math.exp(-course.rate_1_s[i] * h);
    }
    return decays;
  }

  /** Whether the row counts. */
  public boolean counts(int row) {
    return scale[row] > 0;
  }

  public double keep(int row) {
    return keep[row];
  }

  public double gain(int row) {
    return gain[row];
  }

  public double scale(int row) {
    return scale[row];
  }

  /** Whitened residuals; those of rows left out are 0. */
  public double[] apply(double[] residuals) {
    double[] white = surprises(residuals);
    for (int i = 0; i < white.length; i++) {
      white[i] = scale[i] > 0 ? white[i] : 0;
    }
    return white;
  }

  /** The same with the rows left out among them: how far each lies from what the others say. */
  public double[] surprises(double[] residuals) {
    double[] white = new double[residuals.length];
    double expected = 0;
    for (int i = 0; i < residuals.length; i++) {
      expected *= keep[i];
      double surprise = residuals[i] - expected;
      white[i] = surprise / sd[i];
      expected += gain[i] * surprise;
    }
    return white;
  }

  /** Residuals whose whitened form is this: the way back from {@link #apply}. */
  public double[] colour(double[] white) {
    double[] residuals = new double[white.length];
    double expected = 0;
    for (int i = 0; i < white.length; i++) {
      expected *= keep[i];
      double surprise = scale[i] > 0 ? white[i] / scale[i] : 0;
      residuals[i] = expected + surprise;
      expected += gain[i] * surprise;
    }
    return residuals;
  }

  /** −2 log likelihood of the residuals, without its constant. */
  public double deviance(double[] residuals) {
    double sum = logDeterminant;
    for (double white : apply(residuals)) {
      sum += white * white;
    }
    return sum;
  }

  /** What a fit says of the ball at the rows of a track. */
  public static final class Course {
    public final double[] rate_1_s;

    /** Loss times difference in signal units, per second. */
    public final double[] lossSignal_1_s;

    /** Its change with the speed, per m/s. */
    public final double[] bySpeed_1_m;

    public final double[] speed_m_s;
    public final boolean[] moved;

    public Course(int rows) {
      rate_1_s = new double[rows];
      lossSignal_1_s = new double[rows];
      bySpeed_1_m = new double[rows];
      speed_m_s = new double[rows];
      moved = new boolean[rows];
    }

    /** Power density with which the wandering drives the signal at a row. */
    double drive(int row, Wander wander) {
      if (!moved[row]) {
        return lossSignal_1_s[row] * lossSignal_1_s[row] * wander.rest_s();
      }
      double by = bySpeed_1_m[row];
      return by
          * by
          * (speed_m_s[row] * speed_m_s[row] * wander.turning_s() + wander.draught_m2_s());
    }
  }
}
