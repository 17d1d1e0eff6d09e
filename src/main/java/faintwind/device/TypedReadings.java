package faintwind.device;

import faintwind.calibration.live.LiveSample;
import faintwind.calibration.speed.LogAir;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * Readings that a person takes from a meter: asked for at even times, the first at once. A reading
 * belongs to the last time it was asked for, whenever it is typed; one that is not typed is not
 * there.
 */
public final class TypedReadings implements SampleSource {
  private static final Duration NAP = Duration.ofMillis(50);

  private final double every_s;
  private final Asker asker;
  private final Timekeeper time;
  private final ConcurrentLinkedQueue<Double> typed = new ConcurrentLinkedQueue<>();
  private Instant begin = Instant.MIN;
  private long asked;
  private boolean begun;
  private volatile boolean closed;
  private volatile boolean ended;

  /** Asks a person to read the meter now: with a beep, and in words. */
  @FunctionalInterface
  public interface Asker {
    /**
     * Asks.
     *
     * @param number how many times it was asked by now, from 1
     * @param time_s time in the recording, s
     */
    void ask(long number, double time_s);
  }

  /**
   * Readings at even times.
   *
   * @param every_s time between two, above 0
   * @param asker asks for each, on the recording's thread
   * @param time what it waits by
   */
  public TypedReadings(double every_s, Asker asker, Timekeeper time) {
    if (!(every_s > 0)) {
      throw new IllegalArgumentException("every_s = " + every_s + ", allowed above 0");
    }
    this.every_s = every_s;
    this.asker = asker;
    this.time = time;
  }

  /** A reading was typed. */
  public void enter(double value) {
    typed.add(value);
  }

  /** No further reading comes; those typed by now still count. */
  public void end() {
    ended = true;
  }

  @Override
  public SourceEvent next() throws InterruptedException {
    if (!begun) {
      begun = true;
      begin = time.now();
      return new SourceEvent.Connected(begin);
    }
    while (!closed) {
      boolean last = ended;
      if (untilDue().isNegative() || untilDue().isZero()) {
        asked++;
        asker.ask(asked, (asked - 1) * every_s);
      }
      Double value = typed.poll();
      if (value != null) {
        return reading(value);
      }
      if (last) {
        break;
      }
      Duration wait = untilDue();
      time.pause(wait.compareTo(NAP) > 0 ? NAP : wait);
    }
    return new SourceEvent.Ended(time.now());
  }

  private Duration untilDue() {
    return Duration.between(time.now(), begin.plusNanos((long) (asked * every_s * 1e9)));
  }

  private SourceEvent reading(double value) {
    OptionalDouble none = OptionalDouble.empty();
    OptionalDouble time_s = OptionalDouble.of((asked - 1) * every_s);
    LiveSample sample =
        new LiveSample(time_s, OptionalDouble.of(value), LogAir.UNKNOWN, none, none);
    return new SourceEvent.Reading(sample, time.now());
  }

  @Override
  public void close() {
    closed = true;
  }
}
