package faintwind.device;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** A short tone that asks for a reading. Silent where there is no sound device. */
public final class Beep {
  private static final int RATE_HZ = 22_050;
  private static final double TONE_HZ = 880;
  private static final double LENGTH_S = 0.18;
  private static final AudioFormat FORMAT = new AudioFormat(RATE_HZ, 16, 1, true, false);

  private Beep() {}

  /** Sounds once, on a thread of its own. */
  public static void sound() {
    Thread thread = new Thread(Beep::play, "faintwind-beep");
    thread.setDaemon(true);
    thread.start();
  }

  private static void play() {
    try (SourceDataLine line = AudioSystem.getSourceDataLine(FORMAT)) {
      line.open(FORMAT);
      line.start();
      byte[] tone = tone();
      line.write(tone, 0, tone.length);
      line.drain();
    } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
      // the words on the screen ask too
      Thread.currentThread().interrupt();
    }
  }

  private static byte[] tone() {
    int samples = (int) (LENGTH_S * RATE_HZ);
    byte[] bytes = new byte[2 * samples];
    for (int i = 0; i < samples; i++) {
      double fade = Math.min(1, Math.min(i, samples - i) / 200.0);
      int value =
          (int) (0.3 * Short.MAX_VALUE * fade * Math.sin(2 * Math.PI * TONE_HZ * i / RATE_HZ));
      bytes[2 * i] = (byte) value;
      bytes[2 * i + 1] = (byte) (value >> 8);
    }
    return bytes;
  }
}
