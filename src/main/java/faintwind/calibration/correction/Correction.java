package faintwind.calibration.correction;

import java.util.Locale;

/**
 * One correction of the speed.
 *
 * @param source what it is about
 * @param size relative change of the speed that it makes, negative where the air past the ball is
 *     slower than the ball through the room
 * @param u its relative standard uncertainty
 * @param basis where it comes from
 */
public record Correction(Source source, double size, double u, Basis basis) {

  /** What a correction is about. */
  public enum Source {
    /** Air carried round by the arm. */
    CARRIED,
    /** Radius to the ball's centre. */
    RADIUS,
    /** Draught of the room. */
    DRAUGHT,
    /** Clockwise against counter-clockwise. */
    DIRECTION,
    /** Temperature, pressure and humidity of the runs against those of the calibration. */
    AIR_STATE;

    /** The word in bundle keys. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Where a correction comes from. */
  public enum Basis {
    /** Stated with the runs: a vane, a thread, or the instrument itself. */
    STATED,
    /** Shown by the recordings. */
    SHOWN,
    /** Nothing shows it: an assumption stands in. */
    ASSUMED;

    /** The word in bundle keys. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
