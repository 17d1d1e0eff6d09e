package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.Setup;
import faintwind.calibration.fit.squares.Optimum;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import java.util.Map;

/** One fit of simulated runs that nothing ails, for tests of what is read from a fit. */
final class HealthyFit {
  static final RunSet SET = SampleRuns.of("bench-g");
  static final FitResult FIT = SampleRuns.value(FitToRuns.fit(SET, () -> false));

  private HealthyFit() {}

  /** The same fit as if it had come to rest elsewhere: these unknowns at these values. */
  static FitResult moved(Map<String, Double> values) {
    Setup setup = new Setup(FIT.setting(), FIT.setup().layout().model());
    RunProblem problem = setup.problem();
    double[] point = FIT.solution().optimum().point();
    values.forEach(
        (name, value) -> point[index(name)] = setup.unknowns().get(index(name)).x(value));
    problem.whiten(point, FIT.solution().wander());
    return new FitResult(
        FIT.setting(),
        setup,
        problem,
        new FitResult.Solution(
            Optimum.at(point, problem.linearise(point)),
            FIT.solution().wander(),
            FIT.runScatter(),
            FIT.deviance()));
  }

  /** Value of an unknown by its name. */
  static double value(String name) {
    return FIT.values()[index(name)];
  }

  static int index(String name) {
    for (int i = 0; i < FIT.setup().unknowns().size(); i++) {
      if (FIT.setup().unknowns().get(i).name().equals(name)) {
        return i;
      }
    }
    throw new AssertionError(name);
  }

  static Run run(String name) {
    return SET.runs().stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }
}
