package faintwind.calibration.fit.health;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import java.util.OptionalDouble;

/**
 * When the arm really turned, by the bends of the signal: it begins to fall steeply when the arm
 * starts and to rise when it stops. Asked of runs only that contradict the others.
 */
public final class SpinMarks {
  private SpinMarks() {}

  /** By how much the arm turned later than the marks say, s; empty where they fit. */
  public static OptionalDouble shift_s(Run run, int sign) {
    if (run.arm().isEmpty()) {
      return OptionalDouble.empty();
    }
    ArmTurning arm = run.arm().get();
    Series signal = run.recording().signal();
    double start = steepest(signal, arm.spinStart_s(), -sign) - arm.spinStart_s();
    double stop = steepest(signal, arm.spinStop_s(), sign) - arm.spinStop_s();
    boolean both = Math.abs(start - stop) < OwnChoices.SAME_SHIFT_S && start * stop > 0;
    double shift = 0.5 * (start + stop);
    return both && Math.abs(shift) > OwnChoices.LEAST_SHIFT_S
        ? OptionalDouble.of(shift)
        : OptionalDouble.empty();
  }

  /** Where the slope changes most in one direction, within reach of a mark. */
  private static double steepest(Series signal, double mark_s, double direction) {
    double most = Double.NEGATIVE_INFINITY;
    double at = mark_s;
    double from =
        Math.max(signal.first_s() + OwnChoices.BEND_SPAN_S, mark_s - OwnChoices.MARK_REACH_S);
    double to =
        Math.min(signal.last_s() - OwnChoices.BEND_SPAN_S, mark_s + OwnChoices.MARK_REACH_S);
    for (double t = from; t <= to; t += OwnChoices.MARK_STEP_S) {
      double before =
          mean(signal, t - 2, t + 2)
              - mean(signal, t - OwnChoices.BEND_SPAN_S - 2, t - OwnChoices.BEND_SPAN_S + 2);
      double after =
          mean(signal, t + OwnChoices.BEND_SPAN_S - 2, t + OwnChoices.BEND_SPAN_S + 2)
              - mean(signal, t - 2, t + 2);
      double bend = direction * (after - before);
      if (bend > most) {
        most = bend;
        at = t;
      }
    }
    return at;
  }

  private static double mean(Series signal, double from_s, double to_s) {
    Series part = signal.window(from_s, to_s);
    return part.isEmpty() ? signal.at(0.5 * (from_s + to_s)) : part.mean();
  }
}
