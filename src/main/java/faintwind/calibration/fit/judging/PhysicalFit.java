package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.health.DataCheck;
import faintwind.calibration.fit.health.Leak;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.health.Slip;
import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

/**
 * The physics-shaped fit of a set of runs, or every reason why no calibration can stand on them:
 * what the recordings show before a fit, a heat balance that cannot follow them, and a formula that
 * physics does not allow. Where it does not, the usual slips are tried on all runs: the fit is made
 * again with every speed freed of each, and the likeliest that physics allows is named.
 */
final class PhysicalFit {
  private final RunSet set;
  private final BooleanSupplier cancelled;

  private PhysicalFit(RunSet set, BooleanSupplier cancelled) {
    this.set = set;
    this.cancelled = cancelled;
  }

  static Checked<FitResult> of(RunSet set, BooleanSupplier cancelled) {
    List<Problem> refusals = new ArrayList<>(DataCheck.refusals(set));
    if (refusals.isEmpty()) {
      refusals.addAll(SignalCheck.refusals(set.sound()));
    }
    return refusals.isEmpty()
        ? new PhysicalFit(Leak.freed(set), cancelled).fit()
        : Checked.refused(refusals);
  }

  private Checked<FitResult> fit() {
    Setting setting = Setting.of(set);
    FitResult fit;
    try {
      fit = FitToRuns.fit(setting, setting.model(PhysicsShaped.ID), cancelled);
    } catch (Minimum.NoneFound none) {
      return Checked.refused(slipOr(List.of(notFollowed(setting)), OptionalDouble.empty()));
    }
    PhysicsGate gate = new PhysicsGate(fit);
    List<Problem> impossible = gate.refusals();
    return impossible.isEmpty()
        ? Checked.ok(fit)
        : Checked.refused(slipOr(impossible, OptionalDouble.of(gate.writtenOverTrue())));
  }

  /**
   * The slip that explains it first, where there is one: those near the factor that the multipliers
   * ask for, else all.
   */
  private List<Problem> slipOr(List<Problem> impossible, OptionalDouble writtenOverTrue) {
    List<Slip> near =
        Arrays.stream(Slip.values())
            .filter(slip -> writtenOverTrue.isPresent())
            .filter(slip -> isNear(slip, writtenOverTrue.orElseThrow()))
            .toList();
    List<Slip> others = Arrays.stream(Slip.values()).filter(slip -> !near.contains(slip)).toList();
    List<Problem> all = new ArrayList<>();
    slipInAll(near).or(() -> slipInAll(others)).ifPresent(all::add);
    all.addAll(impossible);
    return all;
  }

  private static boolean isNear(Slip slip, double writtenOverTrue) {
    return Math.abs(Math.log(slip.factor() / writtenOverTrue)) < OwnChoices.NEAR_SLIP;
  }

  /** The run that lies farthest from what any heated ball would do. */
  private static Problem notFollowed(Setting setting) {
    Setup setup = new Setup(setting, setting.model(PhysicsShaped.ID));
    RunProblem problem = setup.problem();
    problem.integrate(new double[setup.unknowns().size()]);
    Map<String, Double> worst = new HashMap<>();
    for (int k = 0; k < problem.tracks().size(); k++) {
      Track track = problem.tracks().get(k);
      double[] residuals = problem.residuals(k);
      for (int i = 0; i < residuals.length; i++) {
        double off = Math.abs(residuals[i]) / setting.largest();
        worst.merge(
            track.runs.get(track.rows.run[i]),
            Double.isFinite(off) ? off : Double.MAX_VALUE,
            Math::max);
      }
    }
    String run = worst.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    return Problem.error("fit.not-followed", Where.run(run), "");
  }

  /** The slip in all runs that explains them. */
  private Optional<Problem> slipInAll(List<Slip> slips) {
    Optional<Slip> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Slip slip : slips) {
      Optional<FitResult> fit = without(slip);
      if (fit.isPresent() && fit.get().deviance() < least) {
        least = fit.get().deviance();
        best = Optional.of(slip);
      }
    }
    return best.map(
        slip ->
            Problem.error(
                "fit.slip-all." + slip.id(), Where.NOWHERE, SignalCheck.text(slip.factor())));
  }

  /** The fit with every speed freed of a slip, where physics allows it and most runs count. */
  private Optional<FitResult> without(Slip slip) {
    RunSet freed = set.with(set.runs().stream().map(run -> freed(run, slip.factor())).toList());
    Setting setting = Setting.of(freed);
    try {
      FitResult fit =
          FitToRuns.fitFromExpected(setting, setting.model(PhysicsShaped.ID), cancelled);
      boolean possible =
          new PhysicsGate(fit).refusals().isEmpty()
              && 2 * LeftOutRuns.contradicting(fit).size() < fit.setup().speedColumns().size();
      return possible ? Optional.of(fit) : Optional.empty();
    } catch (Minimum.NoneFound none) {
      return Optional.empty();
    }
  }

  private static Run freed(Run run, double factor) {
    if (run.arm().isEmpty()) {
      return run;
    }
    ArmTurning arm = run.arm().get();
    return run.turned(
        new ArmTurning(
            arm.radius_m(),
            arm.turns() / factor,
            arm.turnsTime_s(),
            arm.spinStart_s(),
            arm.spinStop_s(),
            arm.swirlShare()));
  }
}
