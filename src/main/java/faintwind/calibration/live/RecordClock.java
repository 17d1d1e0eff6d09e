package faintwind.calibration.live;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Gives each reading its time in the record, so that the record's time rises whatever the logger's
 * clock does, and says where the record has a break. A logger whose time goes back was started
 * again; one whose time runs ahead of the time that passed has jumped: from there on the record
 * goes on by the time of arrival, which was measured, and the break is marked. Mutable; for one
 * record.
 *
 * <p>Tolerances are our own choice, no source, shown right by RecordClockTest: silent above five
 * usual steps and 2 s; jumped where a reading seems to come from more than 2 s, and five usual
 * steps, ahead.
 */
public final class RecordClock {
  private static final double LEAST_SILENCE_S = 2;
  private static final double SILENT_STEPS = 5;
  private static final double USUAL_SHARE = 0.1;

  /** No logger of such an instrument takes this long from its first reading to the next. */
  private static final double UNUSUAL_S = 600;

  private static final double LEAST_STEP_S = 1e-6;

  private final Arrival arrival;
  private Optional<Instant> first = Optional.empty();
  private double shift_s;
  private double last_s;
  private double lastArrival_s;
  private double lead_s;
  private double usual_s;

  /** Whether readings arrive as they are made. */
  public enum Arrival {
    LIVE,
    /** Some were stored before and arrive at once: arrival says nothing of their time. */
    STORED
  }

  /**
   * A reading's place in the record.
   *
   * @param time_s on the record's clock
   * @param gap why the record has a break before it
   */
  public record Placed(double time_s, Optional<LiveGap> gap) {}

  public RecordClock(Arrival arrival) {
    this.arrival = arrival;
  }

  /**
   * Places the next reading.
   *
   * @param source_s on the source's clock; empty where it tells none: then its arrival counts
   * @param received when it arrived
   * @return empty where its time is that of the reading before: both cannot stand
   */
  public Optional<Placed> place(OptionalDouble source_s, Instant received) {
    if (first.isEmpty()) {
      first = Optional.of(received);
      last_s = source_s.orElse(0);
      lead_s = last_s;
      return Optional.of(new Placed(last_s, Optional.empty()));
    }
    double arrival_s = Duration.between(first.get(), received).toNanos() / 1e9;
    double passed_s = arrival_s - lastArrival_s;
    double time_s = source_s.isPresent() ? source_s.getAsDouble() + shift_s : arrival_s;
    if (Math.abs(time_s - last_s) < LEAST_STEP_S) {
      return Optional.empty();
    }
    Optional<LiveGap> gap = gap(time_s, arrival_s, source_s.isPresent());
    if (gap.equals(Optional.of(LiveGap.RESTARTED)) || gap.equals(Optional.of(LiveGap.JUMPED))) {
      double goesOn_s = last_s + Math.max(passed_s, Math.max(usual_s, 1e-3));
      shift_s += goesOn_s - time_s;
      time_s = goesOn_s;
    }
    keep(time_s, arrival_s, gap);
    return Optional.of(new Placed(time_s, gap));
  }

  private Optional<LiveGap> gap(double time_s, double arrival_s, boolean ownClock) {
    double step_s = time_s - last_s;
    if (step_s < 0) {
      return Optional.of(LiveGap.RESTARTED);
    }
    double tolerance_s = Math.max(LEAST_SILENCE_S, SILENT_STEPS * usual_s);
    if (ownClock && arrival == Arrival.LIVE && time_s - arrival_s > lead_s + tolerance_s) {
      return Optional.of(LiveGap.JUMPED);
    }
    double silent_s = usual_s > 0 ? tolerance_s : UNUSUAL_S;
    return step_s > silent_s ? Optional.of(LiveGap.SILENT) : Optional.empty();
  }

  private void keep(double time_s, double arrival_s, Optional<LiveGap> gap) {
    if (gap.isEmpty()) {
      double step_s = time_s - last_s;
      usual_s = usual_s == 0 ? step_s : usual_s + USUAL_SHARE * (step_s - usual_s);
    }
    last_s = time_s;
    lastArrival_s = arrival_s;
    // a reading can arrive late but never before it was made: the greatest lead is the true one
    lead_s = Math.max(lead_s, time_s - arrival_s);
  }
}
