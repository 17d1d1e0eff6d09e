package faintwind.device;

import faintwind.calibration.live.LiveSample;
import faintwind.calibration.speed.LogAir;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualInstrument;
import faintwind.calibration.virtual.VirtualSample;
import faintwind.calibration.virtual.VirtualStage;
import faintwind.calibration.virtual.VirtualStage.Heater;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;

/**
 * The virtual instrument as a source: it gives one reading after the other at its logger's step, as
 * fast as it is told. What happens to it (heater, arm, flow) is said from any thread and holds from
 * the next reading on. Everything from here is made up.
 */
public final class VirtualSource implements SampleSource {
  private static final Duration LONGEST_NAP = Duration.ofMillis(50);

  private final VirtualInstrument instrument;
  private final double step_s;
  private final Timekeeper time;
  private double pace;
  private long count;
  private double anchor_s;
  private Instant anchor;
  private double last_s = Double.NEGATIVE_INFINITY;
  private volatile boolean closed;

  /**
   * A made-up instrument, cold, heater off, arm at rest.
   *
   * @param build the instrument
   * @param seed of its noise and draughts
   * @param pace how many of its seconds pass in one second, above 0; infinite for as fast as it can
   * @param time what it waits by
   */
  public VirtualSource(VirtualBuild build, long seed, double pace, Timekeeper time) {
    this.instrument = new VirtualInstrument(build, seed);
    this.step_s = build.chain().reading().step_s();
    this.time = time;
    this.anchor = time.now();
    this.pace = checked(pace);
  }

  /** From the next reading on, this stage; its duration is not looked at. */
  public synchronized void stage(VirtualStage stage) {
    instrument.stage(stage);
  }

  /** From the next reading on, a steady flow past the resting pair. */
  public synchronized void blow(double speed_m_s, Heater heater) {
    instrument.blow(speed_m_s, heater);
  }

  /** As after hours at the stage or flow last said. */
  public synchronized void settle() {
    instrument.settle();
  }

  /** From now on as many of its seconds pass in one second. */
  public synchronized void pace(double times) {
    anchor_s = count * step_s;
    anchor = time.now();
    pace = checked(times);
  }

  /** Time on the instrument's clock, s. */
  public synchronized double time_s() {
    return instrument.time_s();
  }

  /** Length of the path that the arm's measured radius has swept since the start, m. */
  public synchronized double armPath_m() {
    return instrument.path_m();
  }

  @Override
  public SourceEvent next() throws InterruptedException {
    while (!closed) {
      Duration wait = untilDue();
      if (wait.isNegative() || wait.isZero()) {
        return reading();
      }
      time.pause(wait.compareTo(LONGEST_NAP) > 0 ? LONGEST_NAP : wait);
    }
    return new SourceEvent.Ended(time.now());
  }

  private synchronized Duration untilDue() {
    if (Double.isInfinite(pace)) {
      return Duration.ZERO;
    }
    double ahead_s = (count * step_s - anchor_s) / pace;
    return Duration.between(time.now(), anchor.plusNanos((long) (ahead_s * 1e9)));
  }

  private synchronized SourceEvent reading() {
    VirtualSample sample = instrument.sampleAt(count * step_s);
    count++;
    // a logger's stamp; jitter is far smaller than the step, but the stamp must rise
    double stamp_s = Math.max(Math.rint(sample.time_s() * 1000) / 1000, last_s + 0.001);
    last_s = stamp_s;
    OptionalDouble none = OptionalDouble.empty();
    LogAir air = new LogAir(OptionalDouble.of(sample.air_K()), none, none);
    return new SourceEvent.Reading(
        new LiveSample(
            OptionalDouble.of(stamp_s),
            OptionalDouble.of(sample.signal()),
            air,
            OptionalDouble.of(sample.supply_V()),
            none),
        time.now());
  }

  private static double checked(double pace) {
    if (!(pace > 0)) {
      throw new IllegalArgumentException("pace = " + pace + ", allowed above 0");
    }
    return pace;
  }

  @Override
  public void close() {
    closed = true;
  }
}
