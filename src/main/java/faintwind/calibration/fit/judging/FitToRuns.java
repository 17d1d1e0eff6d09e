package faintwind.calibration.fit.judging;

import faintwind.calibration.Cancelled;
import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.fit.numerics.BestSoFar;
import faintwind.calibration.fit.numerics.Optimiser;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.RunScatter;
import faintwind.calibration.fit.numerics.Setting;
import faintwind.calibration.fit.numerics.Setup;
import faintwind.calibration.fit.numerics.Starts;
import faintwind.calibration.fit.numerics.Wander;
import faintwind.calibration.fit.numerics.WanderSearch;
import faintwind.calibration.fit.numerics.Whitening;
import faintwind.calibration.fit.numerics.Wildness;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.run.RunSet;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.apache.commons.math3.exception.MathIllegalStateException;

/**
 * Fits an instrument's formula to all its recordings at once, by integrating the heat balance
 * (never by differentiating the noise). Several starting points are tried, because a single one can
 * end in a wrong valley; the weights, the wandering of the loss and the scatter between runs are
 * settled in turn with the unknowns.
 */
public final class FitToRuns {
  private static final int ROUNDS = 4;

  /** Runs whose speed must be left to make a fit. */
  private static final int LEAST_COUNTING = 2;

  private static final Optimiser ROUGH = new Optimiser(30, 1e-3);
  private static final Optimiser CLOSE = new Optimiser(120, 1e-4);
  private static final Optimiser FINE = new Optimiser(200, 1e-6);

  private FitToRuns() {}

  /**
   * The physics-shaped fit, or every reason why these runs cannot carry one.
   *
   * @param set the runs
   * @param cancelled asked at every step
   * @throws Cancelled where {@code cancelled} says so
   */
  public static Checked<FitResult> fit(RunSet set, BooleanSupplier cancelled) {
    return fit(set, PhysicsShaped.ID, cancelled);
  }

  /** The same with the model of that id. */
  public static Checked<FitResult> fit(RunSet set, String model, BooleanSupplier cancelled) {
    List<Problem> refusals = new ArrayList<>(DataCheck.refusals(set));
    if (refusals.isEmpty()) {
      refusals.addAll(SignalCheck.refusals(set));
    }
    if (!refusals.isEmpty()) {
      return Checked.refused(refusals);
    }
    Setting setting = Setting.of(set);
    return Checked.ok(fit(setting, setting.model(model), cancelled));
  }

  static FitResult fit(Setting setting, ResponseModel model, BooleanSupplier cancelled) {
    Setup setup = new Setup(setting, model);
    RunProblem problem = setup.problem();
    double[] start = bestStart(setup, problem, cancelled);
    return withoutContradicting(refine(setting, setup, problem, start, cancelled), cancelled);
  }

  /** The same from the expected start only, for runners-up. */
  static FitResult fitFromExpected(
      Setting setting, ResponseModel model, BooleanSupplier cancelled) {
    return fitFromExpected(setting, model, Set.of(), cancelled);
  }

  /** The same with the speed of these runs left out, as in the fit it is compared with. */
  static FitResult fitFromExpected(
      Setting setting, ResponseModel model, Set<String> freed, BooleanSupplier cancelled) {
    Setup setup = new Setup(setting, model);
    setup.free(freed);
    RunProblem problem = setup.problem();
    double[] start = new double[setup.unknowns().size()];
    problem.whiten(start, Wander.FIRST);
    double[] rough = minimise(ROUGH, problem, start, cancelled).point();
    return refine(setting, setup, problem, rough, cancelled);
  }

  private static double[] bestStart(Setup setup, RunProblem problem, BooleanSupplier cancelled) {
    double[] best = new double[setup.unknowns().size()];
    double least = Double.POSITIVE_INFINITY;
    for (double[] start : Starts.of(setup)) {
      problem.whiten(start, Wander.FIRST);
      Optimiser.Optimum optimum = minimise(ROUGH, problem, start, cancelled);
      problem.integrate(optimum.point());
      Wander wander = new WanderSearch(problem).from(Wander.FIRST);
      double deviance = deviance(problem, optimum.point(), wander);
      if (deviance < least) {
        least = deviance;
        best = optimum.point();
      }
    }
    return best;
  }

  private static FitResult refine(
      Setting setting, Setup setup, RunProblem problem, double[] start, BooleanSupplier cancelled) {
    double[] x = start;
    problem.integrate(x);
    Wander wander = new WanderSearch(problem).from(Wander.FIRST);
    double scatter = Setup.FIRST_RUN_SCATTER;
    Optimiser.Optimum optimum = null;
    for (int round = 0; round < ROUNDS || optimum == null; round++) {
      problem.whiten(x, wander);
      optimum = minimise(round < ROUNDS - 1 ? CLOSE : FINE, problem, x, cancelled);
      x = optimum.point();
      problem.integrate(x);
      if (round < ROUNDS - 1) {
        wander = new WanderSearch(problem).from(wander);
        Wildness.settle(problem, wander);
        wander = new WanderSearch(problem).from(wander);
        double[] values = setup.unknowns().values(x);
        scatter = RunScatter.settle(setup, values, spread(setup, optimum), scatter);
        x = setup.unknowns().convert(values);
      }
    }
    Optimiser.Optimum settled = CarriedShareProfile.settle(setup, problem, optimum, cancelled);
    problem.integrate(settled.point());
    double deviance = deviance(problem, settled.point(), wander);
    return new FitResult(
        setting, setup, problem, new FitResult.Solution(settled, wander, scatter, deviance));
  }

  /** Runs whose speed contradicts the others are freed of it, and the fit is made again. */
  private static FitResult withoutContradicting(FitResult fit, BooleanSupplier cancelled) {
    Setup setup = fit.setup();
    Set<String> off =
        Diagnosis.contradicting(fit).stream()
            .map(LeftOut::run)
            .filter(setup::counts)
            .collect(Collectors.toSet());
    long counting = setup.speedColumns().keySet().stream().filter(setup::counts).count();
    if (off.isEmpty() || counting - off.size() < LEAST_COUNTING) {
      return fit;
    }
    double[] values = fit.values();
    setup.free(off);
    return refine(fit.setting(), setup, fit.problem(), setup.unknowns().convert(values), cancelled);
  }

  private static double[][] spread(Setup setup, Optimiser.Optimum optimum) {
    double[] slopes = setup.unknowns().slopes(optimum.point());
    double[][] covariance = optimum.unitCovariance();
    for (int i = 0; i < slopes.length; i++) {
      for (int j = 0; j < slopes.length; j++) {
        covariance[i][j] *= slopes[i] * slopes[j];
      }
    }
    return covariance;
  }

  /** The least found; where the limit is reached first, the best point so far. */
  static Optimiser.Optimum minimise(
      Optimiser optimiser, RunProblem problem, double[] start, BooleanSupplier cancelled) {
    BestSoFar best = new BestSoFar(problem);
    try {
      return optimiser.minimise(best, start, cancelled);
    } catch (MathIllegalStateException limitReached) {
      return best.optimum();
    }
  }

  private static double deviance(RunProblem problem, double[] x, Wander wander) {
    double sum = 0;
    for (int k = 0; k < problem.tracks().size(); k++) {
      sum +=
          Whitening.of(problem.tracks().get(k).rows, problem.course(k), wander)
              .deviance(problem.residuals(k));
    }
    for (double each : x) {
      sum += each * each;
    }
    return sum;
  }
}
