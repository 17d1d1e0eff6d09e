package faintwind.guide.turntable;

import faintwind.calibration.plan.PlannedStep;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the guide says at a moment.
 *
 * @param action what to do now
 * @param more_s how much longer, s; empty where it waits for the person
 * @param step the planned step that it belongs to; empty when all is done
 * @param troubles what is wrong, most pressing first
 */
public record Advice(
    Action action, OptionalDouble more_s, Optional<PlannedStep> step, List<Trouble> troubles) {

  /** What to do. */
  public enum Action {
    /** Heater off: leave it alone. */
    KEEP_OFF,
    /** Switch the heater on. */
    SWITCH_ON,
    /** Leave it alone while it warms up. */
    WARMING,
    /** Turn the arm now. */
    SPIN_NOW,
    /** Go on turning. */
    KEEP_TURNING,
    /** Stop the arm. */
    STOP,
    /** The arm has stopped: stand back and leave it alone. */
    STAND_BACK,
    /** Move the balls to another radius, then leave them alone. */
    MOVE_BALLS,
    /** Still air again at the end: leave it alone. */
    STILL_CHECK,
    /** Everything planned was recorded. */
    DONE;

    /** Key of its words. */
    public String key() {
      return "live-guide." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether the guide waits until the person has done it. */
    public boolean waits() {
      return this == SWITCH_ON || this == SPIN_NOW || this == STOP;
    }
  }

  public Advice {
    troubles = List.copyOf(troubles);
  }
}
