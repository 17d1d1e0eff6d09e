package faintwind.calibration.fit.solving;

import faintwind.calibration.fit.judging.SampleRuns;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.squares.Optimum;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import java.util.Map;
import java.util.Set;

/** One fit of simulated runs that nothing ails, for tests of what is read from a fit. */
public final class HealthyFit {
  public static final RunSet SET = SampleRuns.of("bench-g");
  public static final FitResult FIT = SampleRuns.value(FitToRuns.fit(SET, () -> false));

  private HealthyFit() {}

  /** The same fit as if it had come to rest elsewhere: these unknowns at these values. */
  public static FitResult moved(Map<String, Double> values) {
    return told(SET, Set.of(), values);
  }

  /**
   * What other recordings would say of the formula that was fitted: nothing is fitted again.
   *
   * @param set the recordings, of the same table
   * @param freed runs whose own speed does not count
   * @param values unknowns that are put elsewhere
   */
  public static FitResult told(RunSet set, Set<String> freed, Map<String, Double> values) {
    Setting setting = Setting.of(set);
    Setup setup = new Setup(setting, setting.model(FIT.model()));
    setup.free(freed);
    RunProblem problem = setup.problem();
    double[] all = FIT.values();
    values.forEach((name, value) -> all[index(name)] = value);
    double[] point = setup.unknowns().convert(all);
    problem.whiten(point, FIT.solution().wander());
    return new FitResult(
        setting,
        setup,
        problem,
        new FitResult.Solution(
            Optimum.at(point, problem.linearise(point)),
            FIT.solution().wander(),
            FIT.runScatter(),
            FIT.deviance()));
  }

  /** The same fit with another variance of the carried air's share, in units of its prior. */
  public static FitResult withCarriedVariance(double unitVariance) {
    FitResult.Solution found = FIT.solution();
    FitResult.Solution given =
        new FitResult.Solution(
            found.optimum().withVariance(index("carried_share"), unitVariance),
            found.wander(),
            found.runScatter(),
            found.deviance());
    return new FitResult(FIT.setting(), FIT.setup(), FIT.problem(), given);
  }

  /** Value of an unknown by its name. */
  public static double value(String name) {
    return FIT.values()[index(name)];
  }

  public static int index(String name) {
    for (int i = 0; i < FIT.setup().unknowns().size(); i++) {
      if (FIT.setup().unknowns().get(i).name().equals(name)) {
        return i;
      }
    }
    throw new AssertionError(name);
  }

  public static Run run(String name) {
    return SET.runs().stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }
}
