package faintwind.calibration.fit.wander;

/**
 * How strongly a room's air and an arm can wander. What a recording asks for beyond that is no
 * noise but a fault: noise that may grow without bound explains a switched gain as well.
 */
public final class RoomBounds {
  /** Of a strength, from which on it is at its bound: the search ends within some per cent. */
  private static final double NEARLY = 0.9;

  private RoomBounds() {}

  /** The nearest that a room can do. */
  public static Wander within(Wander wander) {
    double memory_s =
        between(OwnChoices.LEAST_MEMORY_S, wander.memory_s(), OwnChoices.MOST_MEMORY_S);
    double least = Wander.strength_m2_s(OwnChoices.LEAST_DRAUGHT_M_S, memory_s);
    double most = Wander.strength_m2_s(OwnChoices.MOST_DRAUGHT_M_S, memory_s);
    return new Wander(
        between(OwnChoices.LEAST_S, wander.rest_s(), OwnChoices.MOST_REST_S),
        between(OwnChoices.LEAST_S, wander.turning_s(), OwnChoices.MOST_TURNING_S),
        between(least, wander.draught_m2_s(), most),
        between(OwnChoices.LEAST_WHITE, wander.white(), OwnChoices.MOST_WHITE),
        memory_s);
  }

  private static double between(double least, double value, double most) {
    return Math.min(most, Math.max(least, value));
  }

  /** Whether the recordings ask for more than a room and an arm do. */
  public static boolean isAtMost(Wander wander) {
    return wander.rest_s() > NEARLY * OwnChoices.MOST_REST_S
        || wander.turning_s() > NEARLY * OwnChoices.MOST_TURNING_S
        || wander.draught_m_s() > NEARLY * OwnChoices.MOST_DRAUGHT_M_S;
  }

  /** How unusual the draught's memory is: −2 log probability, without its constant. */
  public static double deviance(Wander wander) {
    double lasting = Math.log(wander.memory_s() / Wander.MEMORY_S) / OwnChoices.U_MEMORY;
    return lasting * lasting;
  }
}
