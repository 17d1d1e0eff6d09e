package faintwind.calibration.run;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What earlier calibrations showed of the arm that the ball turns on, as knowledge before the next.
 *
 * @param carriedShare share of the arm's speed at which air is carried round
 * @param rise_s time constant with which it comes, at a turn of five seconds
 * @param decay_s time constant with which it goes
 * @param runUp_s time constant with which the arm comes to speed
 */
public record ArmKnown(
    Uncertain carriedShare, Uncertain rise_s, Uncertain decay_s, Uncertain runUp_s) {
  /** By how much the share differs from one session to the next (own choice, no source). */
  private static final double SHARE_BETWEEN = 0.003;

  /** The same of a time constant, relative. */
  private static final double TIME_BETWEEN = 0.2;

  /** As many sessions the own choice is worth beside those that were seen. */
  private static final double WORTH = 2;

  /**
   * What several sessions on one arm say of the next: their mean by weight, and how far they lie
   * apart, which is learned with their number. Empty where there is none.
   */
  public static Optional<ArmKnown> ofSessions(List<ArmKnown> sessions) {
    if (sessions.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ArmKnown(
            next(sessions, ArmKnown::carriedShare, SHARE_BETWEEN),
            timed(sessions, ArmKnown::rise_s),
            timed(sessions, ArmKnown::decay_s),
            timed(sessions, ArmKnown::runUp_s)));
  }

  private static Uncertain timed(List<ArmKnown> sessions, Function<ArmKnown, Uncertain> which) {
    double usual = sessions.stream().mapToDouble(s -> which.apply(s).value()).average().orElse(0);
    return next(sessions, which, TIME_BETWEEN * usual);
  }

  private static Uncertain next(
      List<ArmKnown> sessions, Function<ArmKnown, Uncertain> which, double between) {
    double weights = 0;
    double sum = 0;
    for (ArmKnown session : sessions) {
      Uncertain each = which.apply(session);
      double u = Math.hypot(each.u().orElse(between), between);
      weights += 1 / (u * u);
      sum += each.value() / (u * u);
    }
    double mean = sum / weights;
    double squares = WORTH * between * between;
    for (ArmKnown session : sessions) {
      double away = which.apply(session).value() - mean;
      squares += away * away;
    }
    double apart = Math.sqrt(squares / (WORTH + sessions.size() - 1));
    return Uncertain.of(mean, Math.hypot(1 / Math.sqrt(weights), apart));
  }
}
