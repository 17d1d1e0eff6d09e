package faintwind.calibration.fit.solving;

import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.squares.Optimum;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * The share of the arm's speed at which air is carried round, settled by all shares that the
 * recordings allow, not by the likeliest alone. Near nothing, or where rise and decay are quick,
 * the sum of squares is far from a parabola in the share: its curvature at the least would state a
 * certainty that is not there. So the fit is repeated at fixed shares to both sides of the least.
 * The weight of each is exp(−cost/2) times a power of the room that is left to all other variables
 * there; the room is the root of the determinant of their covariance. Laplace's approximation of a
 * marginal posterior (Tierney and Kadane 1986, from memory) has the power 1. These weights give a
 * median and the mean square about it, and the fit is put to that median. Without the room a share
 * near nothing, which leaves rise, decay and draughts free, weighs too little, with all of it too
 * much: found on made-up builds, and not explained (docs/decisions/0006).
 */
final class CarriedSharePosterior {
  /** Leaves a cost that is a tenth too high at most, seldom more than a few hundredths. */
  private static final Optimiser ALONG = new Optimiser(60, 1e-4);

  private static final Optimiser FINE = new Optimiser(200, 1e-6);
  private static final int AGAIN = 3;

  /** Standard deviation of a share that is held. */
  private static final double HELD = 1e-6;

  private static final double LEAST_SHARE = 0.0005;
  private static final double LEAST_STEP = 0.003;
  private static final double MOST_STEP = 0.008;
  private static final double GROWTH = 1.35;
  private static final int MOST_STEPS = 10;
  private static final int LEAST_POINTS = 4;
  private static final int CELLS = 400;

  private final Setup setup;
  private final RunProblem problem;
  private final BooleanSupplier cancelled;
  private final int index;
  private final List<Point> points = new ArrayList<>();

  /** A fit at a fixed share. */
  private static final class Point {
    final double share;
    final double cost;
    final double[] x;

    /** How that goes with the share, by the curvature there. */
    final double[] byShare;

    /** −2 ln of the weight: the cost, less what the logarithm of the room counts in it. */
    final double deviance;

    Point(double share, double cost, double[] x, double[] byShare, double logRoom) {
      this.deviance = cost - 2 * OwnChoices.ROOM_COUNTS * logRoom;
      this.share = share;
      this.cost = cost;
      this.x = x;
      this.byShare = byShare;
    }

    /** About where the fit rests at another share. */
    double[] at(double other) {
      double[] moved = x.clone();
      for (int i = 0; i < moved.length; i++) {
        moved[i] += (other - share) * byShare[i];
      }
      return moved;
    }
  }

  private CarriedSharePosterior(Setup setup, RunProblem problem, BooleanSupplier cancelled) {
    this.setup = setup;
    this.problem = problem;
    this.cancelled = cancelled;
    this.index = setup.layout().carriedShare();
  }

  /** The optimum moved to the median share, with the share's whole variance in its covariance. */
  static Optimum settle(Setup setup, RunProblem problem, Optimum least, BooleanSupplier cancelled) {
    if (!setup.turns() || setup.statedShare()) {
      return least;
    }
    Optimum from = least;
    for (int again = 0; again < AGAIN; again++) {
      CarriedSharePosterior shares = new CarriedSharePosterior(setup, problem, cancelled);
      shares.scan(from);
      Optional<Optimum> better = shares.better(from);
      if (better.isEmpty()) {
        return shares.settled(from);
      }
      from = better.get();
    }
    return from;
  }

  private void scan(Optimum least) {
    Unknown prior = setup.unknowns().get(index);
    double[] x = least.point();
    double share = prior.value(x[index]);
    double u = Math.sqrt(least.curvatureCovariance()[index][index]) * prior.slope(x[index]);
    double step = Math.min(MOST_STEP, Math.max(LEAST_STEP, u));
    double[] byShare = with(least, prior.slope(x[index]));
    points.add(new Point(share, least.sumOfSquares(), x, byShare, logRoom(least, x)));
    walk(points.get(0), step);
    walk(points.get(0), -step);
    points.sort(Comparator.comparingDouble(p -> p.share));
  }

  /** A lower valley that the scan came upon. */
  private Optional<Optimum> better(Optimum least) {
    Point lowest = points.stream().min(Comparator.comparingDouble(p -> p.cost)).orElseThrow();
    if (lowest.cost > least.sumOfSquares() - OwnChoices.LOWER) {
      return Optional.empty();
    }
    return Optional.of(Minimum.of(FINE, problem, lowest.x, cancelled));
  }

  private Optimum settled(Optimum least) {
    if (points.size() < LEAST_POINTS) {
      return least;
    }
    double[] moments = moments();
    if (!Double.isFinite(moments[0]) || !Double.isFinite(moments[1])) {
      return least;
    }
    double[] at = fixed(moments[0], nearest(moments[0]), FINE).x;
    double slope = setup.unknowns().get(index).slope(at[index]);
    return Optimum.at(at, problem.linearise(at)).withVariance(index, moments[1] / (slope * slope));
  }

  private void walk(Point from, double firstStep) {
    Point last = from;
    double step = firstStep;
    double least = from.cost;
    for (int i = 0; i < MOST_STEPS && last.cost < least + OwnChoices.FAR; i++) {
      double share = last.share + step;
      boolean ends = step > 0 ? share > OwnChoices.MOST_SHARE : last.share <= LEAST_SHARE;
      if (ends) {
        return;
      }
      last = fixed(Math.max(LEAST_SHARE, share), last, ALONG);
      if (!Double.isFinite(last.cost)) {
        return;
      }
      points.add(last);
      least = Math.min(least, last.cost);
      step *= GROWTH;
    }
  }

  /** The least with the share held, looked for from near it; the cost is that of the true prior. */
  private Point fixed(double share, Point near, Optimiser search) {
    Unknown prior = setup.unknowns().get(index);
    double[] start = near.at(share);
    start[index] = 0;
    setup.unknowns().replace(index, Unknown.linear(prior.name(), share, HELD));
    Optimum held = Minimum.of(search, problem, start, cancelled);
    double[] x = held.point();
    double cost = held.sumOfSquares() - x[index] * x[index] - problem.tied(x);
    double[] byShare = with(held, HELD);
    setup.unknowns().replace(index, prior);
    x[index] = prior.x(share);
    return new Point(
        share, cost + x[index] * x[index] + problem.tied(x), x, byShare, logRoom(held, x));
  }

  /**
   * Logarithm of the room that a share leaves: to all other variables, and to its own, whose prior
   * is a density over x, not over the share.
   */
  private double logRoom(Optimum held, double[] x) {
    return held.logVolumeAround(index) - Math.log(setup.unknowns().get(index).slope(x[index]));
  }

  /**
   * How all variables go with the share where the others stay at their least.
   *
   * @param slope change of the share with its variable
   */
  private double[] with(Optimum optimum, double slope) {
    double[] along = optimum.curvatureCovariance()[index];
    double unit = along[index] * slope;
    for (int i = 0; i < along.length; i++) {
      along[i] /= unit;
    }
    return along;
  }

  private Point nearest(double share) {
    Point nearest = points.get(0);
    for (Point point : points) {
      if (Math.abs(point.share - share) < Math.abs(nearest.share - share)) {
        nearest = point;
      }
    }
    return nearest;
  }

  /**
   * Median, and mean square about it, over the shares; the deviance between them by a cubic spline.
   */
  private double[] moments() {
    double[] shares = points.stream().mapToDouble(p -> p.share).toArray();
    double[] deviances = points.stream().mapToDouble(p -> p.deviance).toArray();
    double least = Arrays.stream(deviances).min().orElseThrow();
    PolynomialSplineFunction deviance = new SplineInterpolator().interpolate(shares, deviances);
    double width = (shares[shares.length - 1] - shares[0]) / CELLS;
    double[] weights = new double[CELLS];
    for (int k = 0; k < CELLS; k++) {
      double share = shares[0] + (k + 0.5) * width;
      weights[k] = Math.exp(0.5 * Math.min(0, least - deviance.value(share)));
    }
    double all = Arrays.stream(weights).sum();
    int half = 0;
    double below = weights[0];
    while (below < 0.5 * all) {
      below += weights[++half];
    }
    double over = (below - 0.5 * all) / weights[half];
    double median = shares[0] + (half + 1 - over) * width;
    double squares = 0;
    for (int k = 0; k < CELLS; k++) {
      double away = shares[0] + (k + 0.5) * width - median;
      squares += weights[k] / all * away * away;
    }
    return new double[] {median, squares};
  }
}
