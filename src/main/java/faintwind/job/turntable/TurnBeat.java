package faintwind.job.turntable;

import faintwind.calibration.beat.BeatTrack;
import faintwind.calibration.plan.Beat;
import faintwind.device.BeatSound;
import java.io.Closeable;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * The beat that the arm follows, with a count-in before the first beat that counts: heard where
 * there is a loudspeaker, and always to be seen by its place. For one thread.
 */
public final class TurnBeat implements Closeable {
  /** Beats before the first that counts. */
  public static final int COUNT_IN = 4;

  private final Optional<BeatSound> sound;
  private final DoubleSupplier seconds;
  private Optional<BeatTrack> track = Optional.empty();
  private double begun_s;

  private TurnBeat(Optional<BeatSound> sound, DoubleSupplier seconds) {
    this.sound = sound;
    this.seconds = seconds;
  }

  /**
   * A beat that is heard where that can be.
   *
   * @param seconds the computer's own time, rising, s
   */
  public static TurnBeat heard(DoubleSupplier seconds) {
    return new TurnBeat(BeatSound.open(), seconds);
  }

  /** A beat that is only seen. */
  public static TurnBeat seen(DoubleSupplier seconds) {
    return new TurnBeat(Optional.empty(), seconds);
  }

  /** Begins the count-in. */
  public void start(Beat beat) {
    BeatTrack next = new BeatTrack(beat, BeatSound.RATE_HZ, COUNT_IN);
    track = Optional.of(next);
    begun_s = seconds.getAsDouble();
    sound.ifPresent(s -> s.start(next));
  }

  /** Time since the first beat that counts, s; below zero while it is counted in. */
  public OptionalDouble since_s() {
    if (track.isEmpty()) {
      return OptionalDouble.empty();
    }
    double gone_s = sound.map(BeatSound::heard_s).orElseGet(() -> seconds.getAsDouble() - begun_s);
    return OptionalDouble.of(gone_s - track.get().firstBeat_s());
  }

  /** Silence. */
  public void stop() {
    track = Optional.empty();
    sound.ifPresent(BeatSound::stop);
  }

  @Override
  public void close() {
    stop();
    sound.ifPresent(BeatSound::close);
  }
}
