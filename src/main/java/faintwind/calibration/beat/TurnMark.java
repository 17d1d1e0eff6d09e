package faintwind.calibration.beat;

/**
 * One tap or click with what it was taken for.
 *
 * @param time_s when
 * @param number its place in the count, from 0; a doubled mark has that of its twin, a mark outside
 *     that of the nearest counted one
 * @param kind what it was taken for
 */
public record TurnMark(double time_s, int number, Kind kind) {

  /** What a mark was taken for. */
  public enum Kind {
    /** Counted. */
    COUNTED,
    /**
     * Counted; at least one mark before it is missing, and the count goes on as if it were there.
     */
    AFTER_MISSED,
    /** Not counted: it lies too near to another. */
    DOUBLED,
    /** Not counted: before or after the stretch in which the arm keeps its pace. */
    OUTSIDE
  }
}
