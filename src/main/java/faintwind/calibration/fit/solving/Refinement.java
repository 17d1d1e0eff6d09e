package faintwind.calibration.fit.solving;

import faintwind.calibration.Cancelled;
import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.WanderSearch;
import faintwind.calibration.fit.numerics.Wildness;
import faintwind.calibration.fit.setup.RunScatter;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.setup.Starts;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.squares.Optimum;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.Whitening;
import faintwind.calibration.response.ResponseModel;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Finds where the unknowns of some runs rest, from a start of several kinds; the weights, the
 * wandering of the loss and the scatter between runs are settled in turn with the unknowns. Each
 * way throws {@link Cancelled} where it is told to stop.
 */
final class Refinement {
  private static final Optimiser ROUGH = new Optimiser(30, 1e-3);
  private static final Optimiser CLOSE = new Optimiser(120, 1e-4);
  private static final Optimiser FINE = new Optimiser(200, 1e-6);

  private final Setting setting;
  private final Setup setup;
  private final RunProblem problem;
  private final Set<String> aside;
  private final BooleanSupplier cancelled;

  private Refinement(Setting setting, Setup setup, Set<String> aside, BooleanSupplier cancelled) {
    this.setting = setting;
    this.setup = setup;
    this.aside = aside;
    this.cancelled = cancelled;
    problem = setup.problem();
    leaveOut();
  }

  /** Of unknowns as they stand, every row counting. */
  static Refinement of(Setting setting, Setup setup, BooleanSupplier cancelled) {
    return new Refinement(setting, setup, Set.of(), cancelled);
  }

  /**
   * Of a setting with a model.
   *
   * @param freed runs whose speed does not count
   * @param aside runs whose rows do not count
   */
  static Refinement of(
      Setting setting,
      ResponseModel model,
      Set<String> freed,
      Set<String> aside,
      BooleanSupplier cancelled) {
    Setup setup = new Setup(setting, model);
    setup.free(freed);
    return new Refinement(setting, setup, aside, cancelled);
  }

  /** Of a fit's runs with another model, its speeds and rows left out as there. */
  static Refinement rival(FitResult to, ResponseModel model, BooleanSupplier cancelled) {
    Setup setup = to.setup().with(model);
    setup.free(to.setup().freed());
    return new Refinement(to.setting(), setup, to.aside(), cancelled);
  }

  /** Of a fit's model with these runs freed, its rows left out as there. */
  static Refinement freed(FitResult fit, Set<String> freed, BooleanSupplier cancelled) {
    return of(fit.setting(), fit.setup().layout().model(), freed, fit.aside(), cancelled);
  }

  /** From the best of several starts, because a single one can end in a wrong valley. */
  FitResult fromBestStart() {
    return from(bestStart());
  }

  /** From what is expected, for runners-up. */
  FitResult fromExpected() {
    return from(expected());
  }

  /** The same without the scan of the carried air where the deviance is above a limit. */
  FitResult fromExpected(double most) {
    return from(expected(), most);
  }

  /** From where another fit rests. */
  FitResult fromWhere(FitResult fit) {
    return from(setup.unknowns().convert(fit.values()));
  }

  private FitResult from(double[] start) {
    return from(start, Double.POSITIVE_INFINITY);
  }

  private FitResult from(double[] start, double most) {
    double[] x = start;
    problem.integrate(x);
    Wander wander = new WanderSearch(problem).from(Wander.FIRST);
    double scatter = RunScatter.FIRST;
    Optimum optimum = null;
    for (int round = 0; round < OwnChoices.ROUNDS || optimum == null; round++) {
      problem.whiten(x, wander);
      optimum = Minimum.of(round < OwnChoices.ROUNDS - 1 ? CLOSE : FINE, problem, x, cancelled);
      x = optimum.point();
      problem.integrate(x);
      if (round < OwnChoices.ROUNDS - 1) {
        wander = new WanderSearch(problem).from(wander);
        Wildness.settle(problem, wander);
        wander = new WanderSearch(problem).from(wander);
        double[] values = setup.unknowns().values(x);
        scatter = RunScatter.settle(setup, values, spread(optimum), scatter);
        x = setup.unknowns().convert(values);
      }
    }
    if (deviance(x, wander) < most) {
      optimum = CarriedSharePosterior.settle(setup, problem, optimum, cancelled);
    }
    Optimum settled = Minimum.withCovariance(optimum);
    problem.integrate(settled.point());
    double deviance = deviance(settled.point(), wander);
    return new FitResult(
            setting, setup, problem, new FitResult.Solution(settled, wander, scatter, deviance))
        .withoutRuns(aside);
  }

  private void leaveOut() {
    for (Track track : problem.tracks()) {
      for (int i = 0; i < track.rows.size(); i++) {
        if (aside.contains(track.runs.get(track.rows.run[i]))) {
          track.rows.leftOut[i] = true;
          track.rows.aside[i] = true;
        }
      }
    }
  }

  private double[] expected() {
    double[] start = new double[setup.unknowns().size()];
    problem.whiten(start, Wander.FIRST);
    return Minimum.of(ROUGH, problem, start, cancelled).point();
  }

  private double[] bestStart() {
    double[] best = new double[setup.unknowns().size()];
    double least = Double.POSITIVE_INFINITY;
    for (double[] start : Starts.of(setup)) {
      problem.whiten(start, Wander.FIRST);
      Optimum optimum = Minimum.of(ROUGH, problem, start, cancelled);
      problem.integrate(optimum.point());
      Wander wander = new WanderSearch(problem).from(Wander.FIRST);
      double deviance = deviance(optimum.point(), wander);
      if (deviance < least) {
        least = deviance;
        best = optimum.point();
      }
    }
    return best;
  }

  private double[][] spread(Optimum optimum) {
    double[] slopes = setup.unknowns().slopes(optimum.point());
    double[][] covariance = optimum.unitCovariance();
    for (int i = 0; i < slopes.length; i++) {
      for (int j = 0; j < slopes.length; j++) {
        covariance[i][j] *= slopes[i] * slopes[j];
      }
    }
    return covariance;
  }

  private double deviance(double[] x, Wander wander) {
    double sum = 0;
    for (int k = 0; k < problem.tracks().size(); k++) {
      sum +=
          Whitening.of(problem.tracks().get(k).rows, problem.course(k), wander)
              .deviance(problem.residuals(k));
    }
    for (double each : x) {
      sum += each * each;
    }
    return sum + problem.tied(x);
  }
}
