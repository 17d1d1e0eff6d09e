package faintwind.calibration.fit.health;

/**
 * A pattern in the heat that one run took.
 *
 * @param kind what the pattern is that of
 * @param share its size, relative to the heat expected
 * @param from_s where it begins, run file's clock; the run's first block where it holds throughout
 * @param gain sum of squared standardised deviations that it explains
 */
public record Ailment(Kind kind, double share, double from_s, double gain) {

  /** Patterns, told apart by where in the run the heat is off and by how it goes with the level. */
  public enum Kind {
    /** No heat from some time on. */
    HEATER_LOST,
    /** All of it off by one factor: supply, gain, or the ball's surface. */
    SCALE,
    /** The same from some time on. */
    SCALE_STEP,
    /** The signal off by one amount: heater current in it, or a zero that moved. */
    OFFSET,
    /** The same from some time on. */
    OFFSET_STEP,
    /** Off at the beginning and less and less so: water that dries. */
    FADING,
    /** Off at rest only: moving air, or a still ball that was not still. */
    REST,
    /** Off while turning only: the speed is not what was written down. */
    TURNING,
    /** The same from some time of the turning on: the ball moved on the arm, or the arm stopped. */
    TURNING_STEP
  }

  /** Whether the recording, not just the speed written down for it, is of no use. */
  public boolean spoilsRecording() {
    return switch (kind) {
      case HEATER_LOST, SCALE, SCALE_STEP, OFFSET, OFFSET_STEP, FADING -> true;
      case REST, TURNING_STEP -> Math.abs(share) > OwnChoices.PART_OFF;
      case TURNING -> false;
    };
  }
}
