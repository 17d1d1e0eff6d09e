package faintwind.files.plan;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import faintwind.calibration.Performance.BudgetShare;
import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.Promise;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** One plan with the keys and units of its file, its numbers rounded for people. */
record StoredPlan(
    Plan.Form form,
    double total_s,
    int lessons,
    double meanU_pct,
    List<AtSpeed> uBySpeed,
    List<Share> budget,
    List<Step> steps) {

  record AtSpeed(double speed_m_s, double u_pct) {}

  record Share(String source, double u_pct) {}

  /** One step; what is turned stands beside it. */
  record Step(
      PlannedStep.Kind step,
      double start_s,
      double duration_s,
      int lesson,
      int recording,
      @JsonUnwrapped @Nullable Spin turned) {}

  record Spin(
      int spin,
      double speed_m_s,
      double uSpeed_m_s,
      double radius_mm,
      OptionalDouble uRadius_mm,
      @JsonUnwrapped Turning turning,
      @Nullable Direction direction) {}

  record Turning(int beatsAMinute, int beatsATurn, int turns, double turnsTime_s) {}

  static StoredPlan of(Plan plan) {
    Promise promise = plan.promise();
    return new StoredPlan(
        plan.form(),
        rounded(plan.total_s(), 3),
        plan.lessons(),
        percent(promise.mean()),
        promise.speeds().stream()
            .map(at -> new AtSpeed(rounded(at.speed_m_s(), 5), percent(at.u())))
            .toList(),
        promise.budget().stream().map(b -> new Share(b.source(), percent(b.u_m_s()))).toList(),
        plan.steps().stream().map(StoredPlan::step).toList());
  }

  private static Step step(PlannedStep step) {
    return new Step(
        step.kind(),
        rounded(step.start_s(), 3),
        rounded(step.duration_s(), 3),
        step.lesson(),
        step.recording(),
        step.spin().map(StoredPlan::spin).orElse(null));
  }

  private static Spin spin(PlannedSpin spin) {
    OptionalDouble u_m = spin.radius_m().u();
    return new Spin(
        spin.number(),
        rounded(spin.speed_m_s(), 6),
        rounded(spin.u_speed_m_s(), 7),
        rounded(1e3 * spin.radius_m().value(), 6),
        u_m.isPresent() ? OptionalDouble.of(rounded(1e3 * u_m.getAsDouble(), 6)) : u_m,
        new Turning(
            spin.beat().perMinute(),
            spin.beat().aTurn(),
            spin.turns(),
            rounded(spin.turnsTime_s(), 3)),
        spin.direction());
  }

  /**
   * The plan.
   *
   * @throws IllegalArgumentException where it contradicts itself
   */
  Plan toModel() {
    return new Plan(
        form,
        steps.stream().map(StoredPlan::step).toList(),
        new Promise(
            meanU_pct / 100,
            uBySpeed.stream()
                .map(a -> new Promise.AtSpeed(a.speed_m_s(), a.u_pct() / 100))
                .toList(),
            budget.stream().map(b -> new BudgetShare(b.source(), b.u_pct() / 100)).toList()));
  }

  private static PlannedStep step(Step step) {
    Optional<Spin> spin =
        Optional.ofNullable(step.turned()).filter(s -> step.step() == PlannedStep.Kind.SPIN);
    return new PlannedStep(
        step.step(),
        step.start_s(),
        step.duration_s(),
        step.lesson(),
        step.recording(),
        spin.map(StoredPlan::spin));
  }

  private static PlannedSpin spin(Spin spin) {
    OptionalDouble u_mm = spin.uRadius_mm();
    return new PlannedSpin(
        spin.spin(),
        new Uncertain(
            spin.radius_mm() / 1e3,
            u_mm.isPresent() ? OptionalDouble.of(u_mm.getAsDouble() / 1e3) : u_mm),
        new Beat(spin.turning().beatsAMinute(), spin.turning().beatsATurn()),
        spin.turning().turns(),
        Optional.ofNullable(spin.direction()).orElseThrow(),
        spin.uSpeed_m_s());
  }

  private static double percent(double share) {
    return rounded(100 * share, 4);
  }

  static double rounded(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN).doubleValue();
  }
}
