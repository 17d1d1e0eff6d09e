package faintwind.calibration.flow;

import java.util.stream.IntStream;

/**
 * Profiles that rise from a wall as a power of the distance, u = (y/R)^(1/n): the common form for
 * turbulent flow in ducts, n = 7 in the middle of the range. Used to integrate the same speeds a
 * second way and to see how far a rule of points is off for profiles of this family.
 */
final class WallLaw {
  /** The usual exponent is 1/7. */
  static final double USUAL = 7;

  private static final int FLATTEST = 12;
  private static final int ROUNDEST = 4;

  private WallLaw() {}

  /** Mean over a circle against the middle: 2n² / ((n + 1)(2n + 1)); 49/60 for n = 7. */
  static double circleMean(double n) {
    return 2 * n * n / ((n + 1) * (2 * n + 1));
  }

  /** Mean over a side against its middle: n / (n + 1). */
  static double sideMean(double n) {
    return n / (n + 1);
  }

  /** Largest relative error of a traverse over exponents from 1/4 to 1/12. */
  static double worst(Traverse traverse) {
    double[] shares = traverse.shares();
    return IntStream.rangeClosed(ROUNDEST, FLATTEST)
        .mapToDouble(n -> Math.abs(error(traverse.opening().shape(), shares, n)))
        .max()
        .orElseThrow();
  }

  /** What the plain mean of a traverse gives against the true mean of a profile, less one. */
  static double error(Opening.Shape shape, double[] shares, double n) {
    double sum = 0;
    for (double share : shares) {
      sum += Math.pow(2 * Math.min(share, 1 - share), 1 / n);
    }
    double mean = sum / shares.length;
    return switch (shape) {
      case ROUND -> mean / circleMean(n) - 1;
      case RECTANGLE -> Math.pow(mean / sideMean(n), 2) - 1;
      case GAP, HIVE -> mean / sideMean(n) - 1;
    };
  }

  /**
   * Weights that integrate over a side: straight between the points, the 1/7 law to the walls.
   * Their sum is below 1, since the speed falls to the walls.
   */
  static double[] sideWeights(double[] shares) {
    double[] weights = new double[shares.length];
    for (int i = 0; i + 1 < shares.length; i++) {
      double half = (shares[i + 1] - shares[i]) / 2;
      weights[i] += half;
      weights[i + 1] += half;
    }
    weights[0] += sideMean(USUAL) * shares[0];
    weights[shares.length - 1] += sideMean(USUAL) * (1 - shares[shares.length - 1]);
    return weights;
  }

  /**
   * Weights that integrate over a circle from the points of one diameter, each half of it for half
   * the circle: straight in r² between the points, the 1/7 law to the wall.
   */
  static double[] circleWeights(double[] shares) {
    int onRadius = shares.length / 2;
    double[] weights = new double[shares.length];
    for (int i = 0; i < onRadius; i++) {
      double wall = 2 * shares[i];
      double r = 1 - wall;
      double inner = i + 1 < onRadius ? square(1 - 2 * shares[i + 1]) : 0;
      double outer = i > 0 ? square(1 - 2 * shares[i - 1]) : r * r;
      // the innermost point stands for all inside it
      double inside = i + 1 < onRadius ? (r * r - inner) / 2 : r * r;
      double outside = i > 0 ? (outer - r * r) / 2 : toWall(wall);
      weights[i] = (inside + outside) / 2;
      weights[shares.length - 1 - i] = weights[i];
    }
    return weights;
  }

  /** 2 ∫ (s/w)^(1/7) (1 − s) ds from 0 to w, the ring from the outermost point to the wall. */
  private static double toWall(double wall) {
    return 2 * (wall * USUAL / (USUAL + 1) - wall * wall * USUAL / (2 * USUAL + 1));
  }

  private static double square(double x) {
    return x * x;
  }
}
