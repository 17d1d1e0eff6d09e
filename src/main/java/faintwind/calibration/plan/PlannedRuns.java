package faintwind.calibration.plan;

import faintwind.calibration.fit.foretelling.PlannedFit;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.run.Uncertain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The rows of a runs table that a plan will bring, with recordings that have times but no
 * measurement: enough to predict what a fit will know.
 */
final class PlannedRuns {
  private PlannedRuns() {}

  /**
   * The runs of steps that follow one another, in parts that begin where the arm comes to rest or
   * the recording begins; each part is known to begin at the difference that the steps before it
   * leave.
   *
   * @param steps of one plan
   * @param fit what is expected of the instrument
   */
  static List<List<Run>> parts(List<PlannedStep> steps, PlannedFit fit) {
    List<List<Run>> parts = new ArrayList<>();
    List<Run> part = new ArrayList<>();
    double delta_K = begins(steps.get(0)) ? 0 : fit.steadyDelta_K(0);
    double from_K = 0;
    for (int i = 0; i < steps.size(); i++) {
      PlannedStep step = steps.get(i);
      if (part.isEmpty()) {
        from_K = delta_K;
      }
      switch (step.kind()) {
        case ZERO -> parts.add(List.of(plain(step, RunKind.ZERO, series(step, step.end_s(), 0))));
        case WARM_UP, STILL ->
            part.add(plain(step, RunKind.STILL, series(step, step.end_s(), from_K)));
        case SPIN -> part.add(spin(step, series(step, restEnd_s(steps, i), from_K)));
        case REST -> {} // belongs to the spin before it
        case MOVE -> {} // hands at the balls: not recorded
      }
      delta_K = after(step, delta_K, fit);
      if (i + 1 < steps.size() && steps.get(i + 1).lesson() != step.lesson()) {
        delta_K = fit.steadyDelta_K(0); // heated again before the next lesson
      }
      boolean last = i + 1 == steps.size() || begins(steps.get(i), steps.get(i + 1));
      if (last && !part.isEmpty()) {
        parts.add(List.copyOf(part));
        part.clear();
      }
    }
    return parts;
  }

  /** Whether a session begins cold. */
  private static boolean begins(PlannedStep first) {
    return first.kind() == PlannedStep.Kind.ZERO || first.kind() == PlannedStep.Kind.WARM_UP;
  }

  /** Whether the next step begins another part. */
  private static boolean begins(PlannedStep step, PlannedStep next) {
    return next.recording() != step.recording()
        || (next.kind() == PlannedStep.Kind.SPIN && step.kind() != PlannedStep.Kind.STILL);
  }

  /** The difference after a step, by a single time constant. */
  static double after(PlannedStep step, double before_K, PlannedFit fit) {
    double speed_m_s = step.spin().map(PlannedSpin::speed_m_s).orElse(0.0);
    double rest_K = step.kind() == PlannedStep.Kind.ZERO ? 0 : fit.steadyDelta_K(speed_m_s);
    double decay = Math.exp(-step.duration_s() / fit.timeConstant_s(speed_m_s));
    return rest_K + (before_K - rest_K) * decay;
  }

  private static double restEnd_s(List<PlannedStep> steps, int spin) {
    double end_s = steps.get(spin).end_s();
    for (int i = spin + 1; i < steps.size(); i++) {
      if (steps.get(i).kind() != PlannedStep.Kind.REST) {
        break;
      }
      end_s = steps.get(i).end_s();
    }
    return end_s;
  }

  private static Run plain(PlannedStep step, RunKind kind, Series signal) {
    String name = step.kind() + " " + step.lesson() + " " + step.start_s();
    return new Run(
        name,
        kind,
        file(step),
        Recording.of(SignalUnit.DELTA_K, signal),
        RunConditions.NONE,
        Optional.empty(),
        Optional.empty());
  }

  private static Run spin(PlannedStep step, Series signal) {
    PlannedSpin spin = step.spin().orElseThrow();
    ArmTurning arm =
        new ArmTurning(
            spin.radius_m(),
            spin.turns(),
            Uncertain.of(spin.turnsTime_s(), ArmSpeed.CLICKS_U_S),
            step.start_s(),
            step.end_s(),
            Optional.empty(),
            OptionalDouble.of(step.start_s() + spin.turnsTime_s() / spin.turns()));
    RunConditions conditions =
        new RunConditions(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.of(spin.direction()),
            Optional.empty(),
            "");
    return new Run(
        "spin " + spin.number(),
        RunKind.SPIN,
        file(step),
        Recording.of(SignalUnit.DELTA_K, signal),
        conditions,
        Optional.of(arm),
        Optional.empty());
  }

  private static String file(PlannedStep step) {
    return step.kind() == PlannedStep.Kind.ZERO ? "zero" : "recording " + step.recording();
  }

  private static Series series(PlannedStep step, double end_s, double first_K) {
    int rows = Math.max(2, (int) Math.floor((end_s - step.start_s()) / OwnChoices.STEP_S) + 1);
    double[] times = new double[rows];
    double[] values = new double[rows];
    for (int i = 0; i < rows; i++) {
      times[i] = step.start_s() + i * OwnChoices.STEP_S;
    }
    Arrays.fill(values, first_K);
    return Series.of(times, values);
  }
}
