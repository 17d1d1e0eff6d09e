package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.squares.Optimum;
import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;

/** The least sum of squares from a start, or the news that there is none. */
public final class Minimum {
  private Minimum() {}

  /**
   * The heat balance cannot follow these recordings: from every start its evaluation fails, or the
   * curvature at the least is none.
   */
  public static final class NoneFound extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoneFound(Throwable cause) {
      super(cause);
    }
  }

  /**
   * The least found; where the limit is reached first, the best point so far.
   *
   * @throws NoneFound where no evaluation gave a number
   */
  public static Optimum of(
      Optimiser optimiser, RunProblem problem, double[] start, BooleanSupplier cancelled) {
    BestSoFar best = new BestSoFar(problem);
    try {
      return finite(fromBest(optimiser, best, start, cancelled));
    } catch (MathIllegalArgumentException noCurvature) {
      throw new NoneFound(noCurvature);
    }
  }

  private static Optimum fromBest(
      Optimiser optimiser, BestSoFar best, double[] start, BooleanSupplier cancelled) {
    try {
      return optimiser.minimise(best, start, cancelled);
    } catch (MathIllegalStateException limitReached) {
      if (!best.hasPoint()) {
        throw new NoneFound(limitReached);
      }
      return best.optimum();
    }
  }

  /**
   * The same least, once its covariance was worked out.
   *
   * @throws NoneFound where the covariance is no number: the search ran off, so that nothing is
   *     known there
   */
  public static Optimum withCovariance(Optimum optimum) {
    try {
      boolean number =
          Arrays.stream(optimum.unitCovariance())
              .flatMapToDouble(Arrays::stream)
              .allMatch(Double::isFinite);
      if (number) {
        return optimum;
      }
    } catch (MathIllegalArgumentException singular) {
      throw new NoneFound(singular);
    }
    throw new NoneFound(new ArithmeticException("covariance not a number"));
  }

  private static Optimum finite(Optimum optimum) {
    boolean number =
        Double.isFinite(optimum.sumOfSquares())
            && Arrays.stream(optimum.point()).allMatch(Double::isFinite);
    if (!number) {
      throw new NoneFound(new ArithmeticException("not a number"));
    }
    return optimum;
  }
}
