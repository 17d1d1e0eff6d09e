package faintwind.calibration.fit.judging;

import faintwind.calibration.Cancelled;
import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.fit.health.DataCheck;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.RunScatter;
import faintwind.calibration.fit.numerics.Setting;
import faintwind.calibration.fit.numerics.Setup;
import faintwind.calibration.fit.numerics.Starts;
import faintwind.calibration.fit.numerics.WanderSearch;
import faintwind.calibration.fit.numerics.Wildness;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.squares.Optimum;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.Whitening;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.RunSet;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

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

  /** A lasting change takes away at least this much of the scatter between runs. */
  private static final double HALF = 0.5;

  /** Runs among which two exchanged ones can be told. */
  private static final int LEAST_FOR_PAIRS = 5;

  /** Rounds in which runs are set aside. */
  private static final int MOST_ROUNDS_ASIDE = 3;

  /** Fits whose deviances differ by less may rest in one valley (own choice). */
  private static final double ONE_VALLEY = 1;

  /**
   * A rival whose deviance is higher by more than this has lost: what it says of the carried air is
   * of no use to anybody (own choice; ten is strong evidence).
   */
  private static final double LOST = 300;

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
      refusals.addAll(SignalCheck.refusals(set.sound()));
    }
    if (!refusals.isEmpty()) {
      return Checked.refused(refusals);
    }
    Setting setting = Setting.of(set);
    return Checked.ok(fit(setting, setting.model(model), cancelled));
  }

  /**
   * The fit of the runs that are sound: those whose heat contradicts the others are set aside, and
   * those whose speed does lose it.
   *
   * @throws Minimum.NoneFound where no evaluation of the heat balance gives a number
   */
  static FitResult fit(Setting setting, ResponseModel model, BooleanSupplier cancelled) {
    Set<String> aside = new HashSet<>(setting.leftOut());
    FitResult fit = fitWithout(setting, model, aside, cancelled);
    Optional<FitResult> exchanged = withoutExchanged(fit, cancelled);
    if (exchanged.isPresent()) {
      return exchanged.get();
    }
    for (int round = 0; round < MOST_ROUNDS_ASIDE; round++) {
      Set<String> more = SetAside.recordings(fit);
      if (more.isEmpty() || !enoughWithout(fit, aside, more)) {
        break;
      }
      aside.addAll(more);
      fit = fitWithout(setting, model, aside, cancelled);
    }
    return withoutChanged(fit, cancelled);
  }

  /**
   * Two runs whose speeds were exchanged bend the formula and blame others; where the speeds
   * scatter, each two that are near in speed are freed together, and the pair is taken whose
   * recordings ask for the speed of the other.
   */
  private static Optional<FitResult> withoutExchanged(FitResult fit, BooleanSupplier cancelled) {
    boolean scatter = SetAside.speedsScatter(fit) || !fit.setup().freed().isEmpty();
    List<String> runs = scatter ? SetAside.bySpeed(fit) : List.of();
    Optional<FitResult> best = Optional.empty();
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j <= i + 2 && j < runs.size() && runs.size() >= LEAST_FOR_PAIRS; j++) {
        Set<String> pair = new HashSet<>(fit.aside());
        pair.addAll(List.of(runs.get(i), runs.get(j)));
        FitResult trial =
            fitFromExpected(
                fit.setting(), fit.setup().layout().model(), pair, fit.aside(), cancelled);
        boolean better =
            trial.runScatter() < HALF * Math.max(fit.runScatter(), OwnChoices.SCATTERED)
                && LeftOutRuns.exchanged(trial, runs.get(i), runs.get(j))
                && best.map(b -> trial.deviance() < b.deviance()).orElse(true);
        best = better ? Optional.of(trial) : best;
      }
    }
    return best;
  }

  /** Where the speeds change for good from one run on, those of the lesser side are freed. */
  private static FitResult withoutChanged(FitResult fit, BooleanSupplier cancelled) {
    if (!SetAside.speedsScatter(fit)) {
      return fit;
    }
    List<String> runs = SetAside.turned(fit);
    Optional<FitResult> best = Optional.empty();
    for (int k = 2; k + 2 <= runs.size(); k++) {
      boolean late = runs.size() - k <= k;
      Set<String> freed = new HashSet<>(late ? runs.subList(k, runs.size()) : runs.subList(0, k));
      freed.addAll(fit.aside());
      FitResult trial =
          fitFromExpected(
              fit.setting(), fit.setup().layout().model(), freed, fit.aside(), cancelled);
      boolean better =
          SetAside.speedChange(trial).isPresent()
              && trial.runScatter() < HALF * fit.runScatter()
              && best.map(b -> trial.runScatter() < b.runScatter()).orElse(true);
      best = better ? Optional.of(trial) : best;
    }
    return best.orElse(fit);
  }

  private static boolean enoughWithout(FitResult fit, Set<String> aside, Set<String> more) {
    long left =
        fit.setup().speedColumns().keySet().stream()
            .filter(run -> !aside.contains(run) && !more.contains(run))
            .count();
    return left >= LEAST_COUNTING;
  }

  /** The fit of unknowns as they stand, some of them held by whoever asks for it. */
  static FitResult fit(Setting setting, Setup setup, BooleanSupplier cancelled) {
    RunProblem problem = setup.problem();
    return refine(setting, setup, problem, bestStart(setup, problem, cancelled), cancelled);
  }

  /** The fit in which the rows and speeds of these runs do not count. */
  static FitResult fitWithout(
      Setting setting, ResponseModel model, Set<String> aside, BooleanSupplier cancelled) {
    Setup setup = new Setup(setting, model);
    setup.free(aside);
    RunProblem problem = setup.problem();
    leaveOut(problem, aside);
    double[] start = bestStart(setup, problem, cancelled);
    FitResult fit = refine(setting, setup, problem, start, cancelled).withoutRuns(aside);
    return withoutContradicting(fit, cancelled);
  }

  private static void leaveOut(RunProblem problem, Set<String> aside) {
    for (Track track : problem.tracks()) {
      for (int i = 0; i < track.rows.size(); i++) {
        if (aside.contains(track.runs.get(track.rows.run[i]))) {
          track.rows.leftOut[i] = true;
          track.rows.aside[i] = true;
        }
      }
    }
  }

  /** The same from the expected start only, for runners-up. */
  static FitResult fitFromExpected(
      Setting setting, ResponseModel model, BooleanSupplier cancelled) {
    return fitFromExpected(setting, model, setting.leftOut(), setting.leftOut(), cancelled);
  }

  /**
   * The same of a rival to a fit: without its speeds and runs left out, and without the scan of the
   * carried air where it has lost by far.
   */
  static FitResult rival(FitResult to, ResponseModel model, BooleanSupplier cancelled) {
    Setup setup = to.setup().with(model);
    setup.free(to.setup().freed());
    RunProblem problem = setup.problem();
    leaveOut(problem, to.aside());
    double[] start = expected(setup, problem, cancelled);
    double lost = to.deviance() + LOST;
    return refine(to.setting(), setup, problem, start, lost, cancelled).withoutRuns(to.aside());
  }

  private static FitResult fitFromExpected(
      Setting setting,
      ResponseModel model,
      Set<String> freed,
      Set<String> aside,
      BooleanSupplier cancelled) {
    Setup setup = new Setup(setting, model);
    setup.free(freed);
    RunProblem problem = setup.problem();
    leaveOut(problem, aside);
    double[] start = expected(setup, problem, cancelled);
    return refine(setting, setup, problem, start, cancelled).withoutRuns(aside);
  }

  private static double[] expected(Setup setup, RunProblem problem, BooleanSupplier cancelled) {
    double[] start = new double[setup.unknowns().size()];
    problem.whiten(start, Wander.FIRST);
    return Minimum.of(ROUGH, problem, start, cancelled).point();
  }

  private static double[] bestStart(Setup setup, RunProblem problem, BooleanSupplier cancelled) {
    double[] best = new double[setup.unknowns().size()];
    double least = Double.POSITIVE_INFINITY;
    for (double[] start : Starts.of(setup)) {
      problem.whiten(start, Wander.FIRST);
      Optimum optimum = Minimum.of(ROUGH, problem, start, cancelled);
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
    return refine(setting, setup, problem, start, Double.POSITIVE_INFINITY, cancelled);
  }

  /** The same without the scan of the carried air where the deviance is above a limit. */
  private static FitResult refine(
      Setting setting,
      Setup setup,
      RunProblem problem,
      double[] start,
      double most,
      BooleanSupplier cancelled) {
    double[] x = start;
    problem.integrate(x);
    Wander wander = new WanderSearch(problem).from(Wander.FIRST);
    double scatter = Setup.FIRST_RUN_SCATTER;
    Optimum optimum = null;
    for (int round = 0; round < ROUNDS || optimum == null; round++) {
      problem.whiten(x, wander);
      optimum = Minimum.of(round < ROUNDS - 1 ? CLOSE : FINE, problem, x, cancelled);
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
    if (deviance(problem, x, wander) < most) {
      optimum = CarriedSharePosterior.settle(setup, problem, optimum, cancelled);
    }
    Optimum settled = Minimum.withCovariance(optimum);
    problem.integrate(settled.point());
    double deviance = deviance(problem, settled.point(), wander);
    return new FitResult(
        setting, setup, problem, new FitResult.Solution(settled, wander, scatter, deviance));
  }

  /**
   * Runs whose speed contradicts the others are freed of it, and the fit is made again; a run that
   * then agrees, because another one had bent the formula, counts after all.
   */
  private static FitResult withoutContradicting(FitResult fit, BooleanSupplier cancelled) {
    Set<String> off = contradicting(fit);
    off.removeIf(run -> !fit.setup().counts(run));
    if (off.isEmpty() || counting(fit) - off.size() < LEAST_COUNTING) {
      return fit;
    }
    FitResult without = freed(fit, off, cancelled);
    Set<String> still = contradicting(without);
    still.retainAll(off);
    if (still.isEmpty()) {
      return fit;
    }
    return still.size() == off.size() ? without : freed(fit, still, cancelled);
  }

  private static Set<String> contradicting(FitResult fit) {
    return LeftOutRuns.contradicting(fit).stream()
        .map(LeftOut::run)
        .collect(Collectors.toCollection(HashSet::new));
  }

  private static long counting(FitResult fit) {
    return fit.setup().speedColumns().keySet().stream().filter(fit.setup()::counts).count();
  }

  /**
   * The fit that these runs are freed in too: from where it rests, and from what was expected,
   * because the runs that contradict may have drawn it into a valley that it does not leave without
   * them; the likelier of both.
   */
  private static FitResult freed(FitResult fit, Set<String> runs, BooleanSupplier cancelled) {
    FitResult near = freedNear(fit, runs, cancelled);
    Set<String> free = new HashSet<>(fit.setup().freed());
    free.addAll(runs);
    try {
      FitResult anew =
          fitFromExpected(
              fit.setting(), fit.setup().layout().model(), free, fit.aside(), cancelled);
      return anew.deviance() < near.deviance() - ONE_VALLEY ? anew : near;
    } catch (Minimum.NoneFound none) {
      return near;
    }
  }

  private static FitResult freedNear(FitResult fit, Set<String> runs, BooleanSupplier cancelled) {
    Setup setup = new Setup(fit.setting(), fit.setup().layout().model());
    setup.free(fit.setup().freed());
    setup.free(runs);
    RunProblem problem = setup.problem();
    leaveOut(problem, fit.aside());
    double[] start = setup.unknowns().convert(fit.values());
    return refine(fit.setting(), setup, problem, start, cancelled).withoutRuns(fit.aside());
  }

  /** The same fit of an instrument of whose class the others showed this, from where it rests. */
  public static FitResult among(FitResult fit, ClassKnown others, BooleanSupplier cancelled) {
    Setting setting = fit.setting().among(others);
    Setup setup = new Setup(setting, fit.setup().layout().model());
    setup.free(fit.setup().freed());
    RunProblem problem = setup.problem();
    leaveOut(problem, fit.aside());
    double[] start = setup.unknowns().convert(fit.values());
    return refine(setting, setup, problem, start, cancelled).withoutRuns(fit.aside());
  }

  private static double[][] spread(Setup setup, Optimum optimum) {
    double[] slopes = setup.unknowns().slopes(optimum.point());
    double[][] covariance = optimum.unitCovariance();
    for (int i = 0; i < slopes.length; i++) {
      for (int j = 0; j < slopes.length; j++) {
        covariance[i][j] *= slopes[i] * slopes[j];
      }
    }
    return covariance;
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
    return sum + problem.tied(x);
  }
}
