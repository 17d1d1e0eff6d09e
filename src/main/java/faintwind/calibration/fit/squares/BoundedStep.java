package faintwind.calibration.fit.squares;

/**
 * The step to the least of |y − R step|² whose scaled length is within a tenth of a bound: that of
 * Gauss and Newton where it is short enough, else that with the damping λ |D step|² which is found
 * by Newton's method on the length (MINPACK's lmpar, after Moré 1978).
 */
final class BoundedStep {
  private static final double NEAR = 0.1;
  private static final int MOST_TRIES = 11;
  private static final double LEAST = 2.2251e-308;

  /** The step, to be taken off the point. */
  final double[] back;

  /** λ. */
  final double damping;

  private BoundedStep(double[] back, double damping) {
    this.back = back;
    this.damping = damping;
  }

  static BoundedStep of(Triangle triangle, double[] scale, double bound, double before) {
    double[] step = triangle.solve();
    double length = length(step, scale);
    double over = length - bound;
    if (over <= NEAR * bound) {
      return new BoundedStep(step, 0);
    }
    double least = over / (bound * bend(triangle, step, scale, length));
    double steepest = steepest(triangle.gradient(), scale);
    double most = steepest / bound;
    most = most == 0 ? LEAST / Math.min(bound, NEAR) : most;
    double damping = Math.min(most, Math.max(before, least));
    damping = damping == 0 ? steepest / length : damping;
    for (int i = 0; i < MOST_TRIES; i++) {
      damping = damping == 0 ? Math.max(LEAST, 0.001 * most) : damping;
      Triangle damped = triangle.damped(scale, Math.sqrt(damping));
      step = damped.solve();
      length = length(step, scale);
      double last = over;
      over = length - bound;
      if (Math.abs(over) <= NEAR * bound || (least == 0 && over <= last && last < 0)) {
        break;
      }
      double change = over / (bound * bend(damped, step, scale, length));
      least = over > 0 ? Math.max(least, damping) : least;
      most = over < 0 ? Math.min(most, damping) : most;
      damping = Math.max(least, damping + change);
    }
    return new BoundedStep(step, damping);
  }

  /** How fast the length falls with the damping: |R⁻ᵀ D² step|² over its square. */
  private static double bend(Triangle triangle, double[] step, double[] scale, double length) {
    double[] pull = new double[step.length];
    for (int j = 0; j < pull.length; j++) {
      pull[j] = scale[j] * scale[j] * step[j] / length;
    }
    triangle.solveTransposed(pull);
    double sum = 0;
    for (double each : pull) {
      sum += each * each;
    }
    return sum;
  }

  private static double steepest(double[] gradient, double[] scale) {
    double sum = 0;
    for (int j = 0; j < gradient.length; j++) {
      double part = gradient[j] / scale[j];
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  private static double length(double[] step, double[] scale) {
    double sum = 0;
    for (int j = 0; j < step.length; j++) {
      double part = scale[j] * step[j];
      sum += part * part;
    }
    return Math.sqrt(sum);
  }
}
