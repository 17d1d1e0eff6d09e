package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.numerics.Optimiser;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.Setup;
import faintwind.calibration.run.ClassKnown;
import java.util.function.BooleanSupplier;

/** What it costs the recordings of an instrument to agree with the others of its class. */
public final class Agreement {
  private static final Optimiser FINE = new Optimiser(200, 1e-6);

  private Agreement() {}

  /**
   * Chi-squared of the agreement, all weights as the fit alone settled them: a fit that may count
   * its own speeds for less, or take its loss for wilder, agrees with anything. It may lie a little
   * below 0, as a fit rests at the median of the carried share.
   */
  public static double cost(FitResult alone, ClassKnown others, BooleanSupplier cancelled) {
    Setup setup = new Setup(alone.setting().among(others), alone.setup().layout().model());
    setup.free(alone.setup().freed());
    alone
        .setup()
        .speedColumns()
        .values()
        .forEach(i -> setup.unknowns().replace(i, alone.setup().unknowns().get(i)));
    RunProblem problem = setup.problem().withWeightsOf(alone.problem());
    double[] start = setup.unknowns().convert(alone.values());
    double least = Minimum.of(FINE, problem, start, cancelled).sumOfSquares();
    return least - alone.solution().optimum().sumOfSquares();
  }
}
