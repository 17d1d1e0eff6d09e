package faintwind.calibration.fit.wander;

import faintwind.calibration.fit.track.Track;

/**
 * Turns the correlated residuals of one track into independent ones of unit variance.
 *
 * <p>The loss wanders, the ball integrates that: the residual e is a first-order process, de/dt =
 * −λ e + loss · Δ · w(t) + by · a(t), with λ the ball's own rate, w white and a the draught along
 * the way with a memory of its own ({@link DraughtWalk}); every row adds its own white noise. The
 * whitened residuals are the innovations of a Kalman filter over their standard deviations (Kalman
 * 1960); the filter is linear in the residuals, so that the Jacobian goes through it as well. In
 * this way slow draught and misfit set the uncertainty, not the number of rows.
 */
public final class Whitening {
  private final double[] keep;
  private final double[] gain;
  private final double[] scale;
  private final double[] sd;

  /** What the draught expected at a row leaves of itself and adds to the residual at the next. */
  private final double[] stays;

  private final double[] pushes;

  /** What a surprise says of the draught. */
  private final double[] learns;

  private double logDeterminant;

  private Whitening(double[] keep) {
    int n = keep.length;
    this.keep = keep;
    gain = new double[n];
    scale = new double[n];
    sd = new double[n];
    stays = new double[n];
    pushes = new double[n];
    learns = new double[n];
  }

  /**
   * The filter of a track.
   *
   * @param rows its rows with their weights
   * @param course what the fit says of the ball at the rows
   * @param wander strength of the wandering
   */
  public static Whitening of(Track.Rows rows, Course course, Wander wander) {
    double[] keep = decays(rows, course);
    Whitening made = new Whitening(keep);
    DraughtWalk walk = new DraughtWalk(wander);
    for (int i = 0; i < rows.size(); i++) {
      double rate = course.rate_1_s[i];
      double drive = course.drive(i, wander) * rows.wildness[i];
      double white = drive * (1 - keep[i] * keep[i]) / (2 * rate);
      if (i > 0 && course.moved[i] != course.moved[i - 1]) {
        walk.meetAnother();
      }
      double by = course.byDraught_1_m[i] * Math.sqrt(rows.wildness[i]);
      walk.step(since(rows, i), rate, keep[i], by, white);
      made.stays[i] = walk.stays;
      made.pushes[i] = walk.pushes;
      double reading = rows.sd[i] * wander.white();
      double total = walk.signal + reading * reading;
      made.sd[i] = Math.sqrt(total);
      if (!rows.leftOut[i]) {
        made.gain[i] = walk.signal / total;
        made.learns[i] = walk.both / total;
        made.scale[i] = 1 / made.sd[i];
        walk.seen(total);
        made.logDeterminant += Math.log(total);
      }
    }
    return made;
  }

  /** What is left at each row of the residual of the row before, whatever the wandering. */
  static double[] decays(Track.Rows rows, Course course) {
    double[] decays = new double[rows.size()];
    for (int i = 0; i < decays.length; i++) {
      decays[i] = Math.exp(-course.rate_1_s[i] * since(rows, i));
    }
    return decays;
  }

  /** Time since the row before, s. */
  static double since(Track.Rows rows, int row) {
    return row == 0 ? 0 : rows.time_s[row] - rows.time_s[row - 1];
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

  public double stays(int row) {
    return stays[row];
  }

  public double pushes(int row) {
    return pushes[row];
  }

  public double learns(int row) {
    return learns[row];
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
    double draught = 0;
    for (int i = 0; i < residuals.length; i++) {
      expected = keep[i] * expected + pushes[i] * draught;
      double surprise = residuals[i] - expected;
      white[i] = surprise / sd[i];
      expected += gain[i] * surprise;
      draught = stays[i] * draught + learns[i] * surprise;
    }
    return white;
  }

  /** Residuals whose whitened form is this: the way back from {@link #apply}. */
  public double[] colour(double[] white) {
    double[] residuals = new double[white.length];
    double expected = 0;
    double draught = 0;
    for (int i = 0; i < white.length; i++) {
      expected = keep[i] * expected + pushes[i] * draught;
      double surprise = scale[i] > 0 ? white[i] / scale[i] : 0;
      residuals[i] = expected + surprise;
      expected += gain[i] * surprise;
      draught = stays[i] * draught + learns[i] * surprise;
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

    /** The same with a draught along the way. */
    public final double[] byDraught_1_m;

    public final double[] speed_m_s;
    public final boolean[] moved;

    public Course(int rows) {
      rate_1_s = new double[rows];
      lossSignal_1_s = new double[rows];
      bySpeed_1_m = new double[rows];
      byDraught_1_m = new double[rows];
      speed_m_s = new double[rows];
      moved = new boolean[rows];
    }

    /** Power density with which the wandering, without the draught, drives the signal at a row. */
    double drive(int row, Wander wander) {
      double by = bySpeed_1_m[row] * speed_m_s[row];
      return moved[row]
          ? by * by * wander.turning_s()
          : lossSignal_1_s[row] * lossSignal_1_s[row] * wander.rest_s();
    }
  }
}
