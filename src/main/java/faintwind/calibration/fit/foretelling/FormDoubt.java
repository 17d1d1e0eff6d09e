package faintwind.calibration.fit.foretelling;

/**
 * The doubt that the formula's form is exactly the ball's: a relative error of the speed that
 * changes smoothly with the speed, as straight lines between nodes evenly spaced in the logarithm
 * (own choice, no source). A run near a speed takes the doubt there away; far from every run it
 * stays.
 */
final class FormDoubt {
  static final int NODES = 9;
  static final double SPREAD = 0.005;
  private static final double FIRST_M_S = 0.02;
  private static final double RATIO = 2;

  private FormDoubt() {}

  /** Weight of each node at a speed; they add up to 1. */
  static double[] at(double speed_m_s) {
    double[] weight = new double[NODES];
    double place = Math.log(speed_m_s / FIRST_M_S) / Math.log(RATIO);
    double inside = Math.max(0, Math.min(NODES - 1.000001, place));
    int left = (int) Math.floor(inside);
    weight[left] = 1 - (inside - left);
    weight[left + 1] = inside - left;
    return weight;
  }
}
