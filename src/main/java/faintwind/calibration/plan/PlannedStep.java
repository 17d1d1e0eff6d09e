package faintwind.calibration.plan;

import java.util.Optional;

/**
 * One stretch of the session.
 *
 * @param kind what happens
 * @param start_s when it begins, from the beginning of its lesson, s
 * @param duration_s how long, s
 * @param lesson counts the lessons from 1; a plan that is not split has one
 * @param recording counts the recordings from 1; the logger is started anew at each
 * @param spin what is turned; present exactly for {@link Kind#SPIN}
 */
public record PlannedStep(
    Kind kind,
    double start_s,
    double duration_s,
    int lesson,
    int recording,
    Optional<PlannedSpin> spin) {

  /** What happens in a step. */
  public enum Kind {
    /** Heater off, both balls at room temperature: the chain's offset. */
    ZERO,
    /** Heater on, arm at rest, until the difference is flat. */
    WARM_UP,
    /** The arm turns at one speed. */
    SPIN,
    /** Arm at rest, nobody moves: shows the air carried round. */
    REST,
    /** Arm at rest; the balls are moved to another radius, then left alone. */
    MOVE,
    /** Arm at rest at the end: still air again. */
    STILL
  }

  public PlannedStep {
    if (!(duration_s > 0) || spin.isPresent() != (kind == Kind.SPIN)) {
      throw new IllegalArgumentException(
          kind + ", duration_s = " + duration_s + ", spin = " + spin);
    }
  }

  /** When it ends, from the beginning of its lesson, s. */
  public double end_s() {
    return start_s + duration_s;
  }
}
