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
 * @param asymmetry relative gain of clockwise speed, loss of the other, where both were turned
 */
public record ArmKnown(
    Uncertain carriedShare,
    Uncertain rise_s,
    Uncertain decay_s,
    Uncertain runUp_s,
    Optional<Uncertain> asymmetry) {
  /** By how much the share differs from one session to the next (own choice, no source). */
  private static final double SHARE_BETWEEN = 0.003;

  /** The same of a time constant, relative. */
  private static final double TIME_BETWEEN = 0.2;

  /** The same of the asymmetry. */
  private static final double ASYMMETRY_BETWEEN = 0.001;

  /** As many sessions the own choice is worth beside those that were seen. */
  private static final double WORTH = 2;

  /**
   * What several sessions on one arm say of the next: their mean by weight, and how far they lie
   * apart, which is learned with their number. Empty where there is none.
   */
  public static Optional<ArmKnown> ofSessions(List<ArmKnown> sessions) {
    return sessions.isEmpty() ? Optional.empty() : Optional.of(learned(sessions, true));
  }

  /** How far sessions lie apart, as learned from these: in place of each uncertainty. */
  public static Optional<ArmKnown> spread(List<ArmKnown> sessions) {
    return sessions.isEmpty() ? Optional.empty() : Optional.of(learned(sessions, false));
  }

  private static ArmKnown learned(List<ArmKnown> sessions, boolean next) {
    List<Uncertain> directions = sessions.stream().flatMap(s -> s.asymmetry().stream()).toList();
    return new ArmKnown(
        of(sessions.stream().map(ArmKnown::carriedShare).toList(), SHARE_BETWEEN, next),
        timed(sessions, ArmKnown::rise_s, next),
        timed(sessions, ArmKnown::decay_s, next),
        timed(sessions, ArmKnown::runUp_s, next),
        directions.isEmpty()
            ? Optional.empty()
            : Optional.of(of(directions, ASYMMETRY_BETWEEN, next)));
  }

  private static Uncertain timed(
      List<ArmKnown> sessions, Function<ArmKnown, Uncertain> which, boolean next) {
    List<Uncertain> times = sessions.stream().map(which).toList();
    double usual = times.stream().mapToDouble(Uncertain::value).average().orElse(0);
    return of(times, TIME_BETWEEN * usual, next);
  }

  /** The mean with its uncertainty for the next session, or with the spread between sessions. */
  private static Uncertain of(List<Uncertain> sessions, double between, boolean next) {
    double weights = 0;
    double sum = 0;
    for (Uncertain each : sessions) {
      double u = Math.hypot(each.u().orElse(between), between);
      weights += 1 / (u * u);
      sum += each.value() / (u * u);
    }
    double mean = sum / weights;
    double squares = WORTH * between * between;
    for (Uncertain each : sessions) {
      double away = each.value() - mean;
      squares += away * away;
    }
    double apart = Math.sqrt(squares / (WORTH + sessions.size() - 1));
    return Uncertain.of(mean, next ? Math.hypot(1 / Math.sqrt(weights), apart) : apart);
  }
}
