package faintwind.calibration.plan;

import java.util.List;

/**
 * A turntable session, step by step in the order of time.
 *
 * @param form how the recordings are cut
 * @param steps the steps
 * @param promise what uncertainty it promises
 */
public record Plan(Form form, List<PlannedStep> steps, Promise promise) {

  /** How the recordings are cut. */
  public enum Form {
    /** One warm-up, then the speeds one after another within one recording. */
    STAIRCASE,
    /** Warmed up again, and a recording of its own, for each speed. */
    SEPARATE
  }

  public Plan {
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("no steps");
    }
  }

  /** The spins in the order turned. */
  public List<PlannedSpin> spins() {
    return steps.stream().flatMap(s -> s.spin().stream()).toList();
  }

  /** One lesson alone, from its beginning. */
  public Plan lesson(int number) {
    return new Plan(form, steps.stream().filter(step -> step.lesson() == number).toList(), promise);
  }

  /** Time at the turntable, all lessons together, s. */
  public double total_s() {
    return steps.stream().mapToDouble(PlannedStep::duration_s).sum();
  }

  /** Number of lessons; 1 where the plan is not split. */
  public int lessons() {
    return steps.stream().mapToInt(PlannedStep::lesson).max().orElse(1);
  }
}
