package faintwind.guide.turntable;

import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.run.Series;
import java.util.ArrayList;
import java.util.List;

/** The dotted line ahead: the expected signal step by step. Mutable; for one use. */
final class ExpectedPath {
  private final ExpectedCourse course;
  private final double step_s;
  private final List<Double> times_s = new ArrayList<>();
  private final List<Double> signals = new ArrayList<>();
  private double time_s;
  private double signal;

  ExpectedPath(ExpectedCourse course, double time_s, double signal, double step_s) {
    this.course = course;
    this.step_s = Math.max(1, step_s);
    this.time_s = time_s;
    this.signal = signal;
    keep();
  }

  void go(PlannedStep step, double for_s) {
    double speed_m_s = step.spin().map(PlannedSpin::speed_m_s).orElse(0.0);
    double left_s = for_s;
    while (left_s > 1e-6) {
      double next_s = Math.min(step_s, left_s);
      signal =
          step.kind() == PlannedStep.Kind.ZERO
              ? course.offset()
              : course.after(signal, speed_m_s, next_s);
      time_s += next_s;
      left_s -= next_s;
      keep();
    }
  }

  private void keep() {
    times_s.add(time_s);
    signals.add(signal);
  }

  Series series() {
    return Series.of(
        times_s.stream().mapToDouble(t -> t).toArray(),
        signals.stream().mapToDouble(s -> s).toArray());
  }
}
