package faintwind.device;

import faintwind.calibration.beat.SoundTrack;
import java.io.Closeable;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/**
 * Lets a beat or a tone be heard. Samples are handed over in pieces of a twentieth of a second by a
 * thread of its own; how far it got is told by the sound card's own count of samples. Safe from any
 * thread.
 */
public final class BeatSound implements Closeable {
  /** Samples a second. */
  public static final int RATE_HZ = 44_100;

  private static final int PIECE = RATE_HZ / 20;
  private static final int BUFFERED = 4 * PIECE;
  private static final AudioFormat FORMAT = new AudioFormat(RATE_HZ, 16, 1, true, false);

  private final SourceDataLine line;
  private long begun;
  private Optional<Thread> player = Optional.empty();

  private BeatSound(SourceDataLine line) {
    this.line = line;
  }

  /** The computer's loudspeaker; empty where there is none or it cannot be had. */
  public static Optional<BeatSound> open() {
    try {
      SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT);
      line.open(FORMAT, BUFFERED * FORMAT.getFrameSize());
      line.start();
      return Optional.of(new BeatSound(line));
    } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
      // no sound device, or one that others hold: the beat is seen instead
      return Optional.empty();
    }
  }

  /** Begins a track from its first sample; one that plays is ended. */
  public synchronized void start(SoundTrack track) {
    stop();
    begun = line.getLongFramePosition();
    Thread thread = new Thread(() -> play(track), "faintwind-beat");
    thread.setDaemon(true);
    player = Optional.of(thread);
    thread.start();
  }

  private void play(SoundTrack track) {
    byte[] bytes = new byte[PIECE * FORMAT.getFrameSize()];
    for (long from = 0; !Thread.currentThread().isInterrupted(); from += PIECE) {
      float[] samples = track.samples(from, PIECE);
      for (int i = 0; i < PIECE; i++) {
        int value = Math.round(samples[i] * Short.MAX_VALUE);
        bytes[2 * i] = (byte) value;
        bytes[2 * i + 1] = (byte) (value >> 8);
      }
      line.write(bytes, 0, bytes.length);
    }
  }

  /** How much of the track has been heard, s. */
  public synchronized double heard_s() {
    return (double) (line.getLongFramePosition() - begun) / RATE_HZ;
  }

  /** Silence. */
  public synchronized void stop() {
    player.ifPresent(Thread::interrupt);
    player = Optional.empty();
    line.flush();
  }

  @Override
  public void close() {
    stop();
    line.close();
  }
}
