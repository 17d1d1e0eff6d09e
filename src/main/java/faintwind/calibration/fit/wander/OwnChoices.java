package faintwind.calibration.fit.wander;

/**
 * What a room and an arm do to the loss, at least and at most. Each is our own choice, no source.
 * That faults are not taken for noise is shown by FaultsByAnOpponentTest, that no sound bench asks
 * for more by RoomBoundsTest and SampleRunsTest.
 */
final class OwnChoices {
  /**
   * Draught along the way, standard deviation, m/s: 3 to 40 mm/s in all directions of the floor,
   * where 5 to 20 is common practice.
   */
  static final double LEAST_DRAUGHT_M_S = 0.002;

  static final double MOST_DRAUGHT_M_S = 0.03;

  /** Time in which a draught is forgotten, s: from one eddy passing to air going round a room. */
  static final double LEAST_MEMORY_S = 3;

  static final double MOST_MEMORY_S = 120;

  /** What the logarithm of that time may be off by before any run. */
  static final double U_MEMORY = 1;

  /**
   * Power density of the relative loss at rest, s: draughts of 30 mm/s in all change it by a
   * seventh, for ten seconds or so (own calculation).
   */
  static final double MOST_REST_S = 0.4;

  /** The same of the relative speed, s: an arm that is a tenth too fast for five seconds. */
  static final double MOST_TURNING_S = 0.1;

  /** Both at least. */
  static final double LEAST_S = 1e-6;

  /** Factor on the standard deviation of single rows. */
  static final double LEAST_WHITE = 0.4;

  static final double MOST_WHITE = 5;

  private OwnChoices() {}
}
