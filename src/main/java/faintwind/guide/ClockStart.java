package faintwind.guide;

import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.ClockStarted;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How long the clock of a step runs: its usual time, or what a tin states within its limits. */
public final class ClockStart {
  private static final double HOUR_S = 3600;

  private ClockStart() {}

  /** The usual time, by the design in force. */
  public static Checked<Event> usual(Step step, Map<String, Double> values) {
    Optional<Step.ClockSpec> clock = clock(step, values);
    if (clock.isEmpty()) {
      return refused(step, "enter.unknown-item", "clock", step.id());
    }
    OptionalDouble duration_s = clock.get().duration_s().number(values);
    return duration_s.isEmpty()
        ? refused(step, "gate.reading-not-judged", clock.get().label())
        : Checked.ok(new ClockStarted(clock.get().id(), duration_s.getAsDouble()));
  }

  /** The time of a tin; refused outside the limits of the step. */
  public static Checked<Event> own(Step step, double own_h, Map<String, Double> values) {
    Optional<Step.ClockSpec> clock = clock(step, values);
    Optional<Step.OwnTime> own = clock.flatMap(Step.ClockSpec::own);
    if (own.isEmpty()) {
      return refused(step, "enter.unknown-item", "hours", step.id());
    }
    Step.OwnTime limits = own.get();
    return own_h >= limits.least_h() && own_h <= limits.most_h()
        ? Checked.ok(new ClockStarted(clock.orElseThrow().id(), HOUR_S * own_h))
        : refused(
            step,
            "clock.own-outside",
            hours(own_h),
            hours(limits.least_h()),
            hours(limits.most_h()));
  }

  private static Optional<Step.ClockSpec> clock(Step step, Map<String, Double> values) {
    return step.asks().clock().filter(spec -> spec.runs(values));
  }

  private static String hours(double time_h) {
    return Numerals.digits(time_h, 3);
  }

  private static Checked<Event> refused(Step step, String id, String found, String... details) {
    return Checked.refused(Problem.error(id, Where.step(step.id()), found, details));
  }
}
