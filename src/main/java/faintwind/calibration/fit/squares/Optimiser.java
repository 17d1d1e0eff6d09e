package faintwind.calibration.fit.squares;

import faintwind.calibration.Cancelled;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.apache.commons.math3.exception.MathIllegalStateException;

/**
 * Nonlinear least squares by Levenberg and Marquardt ({@link LevenbergMarquardt}), for every fit of
 * this program. Checked against the certified data sets of NIST StRD.
 */
public final class Optimiser {
  private static final double TOLERANCE = 1e-10;

  private final int mostEvaluations;
  private final double tolerance;

  /** The usual limits. */
  public Optimiser() {
    this(400, TOLERANCE);
  }

  /** Other limits: the most evaluations, and the relative change at which to stop. */
  public Optimiser(int mostEvaluations, double tolerance) {
    this.mostEvaluations = mostEvaluations;
    this.tolerance = tolerance;
  }

  /**
   * The least squares from a start.
   *
   * @param function residuals and Jacobian at a point
   * @param start first point
   * @param cancelled asked before every evaluation
   * @throws Cancelled where {@code cancelled} says so
   * @throws MathIllegalStateException where no minimum is found within the limit
   */
  public Optimum minimise(
      Function<double[], Linearised> function, double[] start, BooleanSupplier cancelled) {
    return new LevenbergMarquardt(
            x -> {
              if (cancelled.getAsBoolean()) {
                throw new Cancelled();
              }
              return function.apply(x);
            },
            mostEvaluations,
            tolerance,
            start)
        .search();
  }
}
