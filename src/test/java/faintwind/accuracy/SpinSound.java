package faintwind.accuracy;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A made-up sound of an arm that clicks once a turn, with the truth beside it. Drawn from the words
 * of the task alone, without a look at the counter: starts from rest, bounces on 30 % of the
 * clicks, speech at 4 dB, missed clicks, 8 to 96 kHz, one or two channels, at times inverted.
 *
 * <p>The 4 dB are the power of a click in its first 10 ms over the mean power of the speech while
 * somebody speaks.
 */
final class SpinSound {
  private static final int[] RATES_HZ = {8000, 11025, 16000, 22050, 44100, 48000, 96000};
  private static final double MEAN_POWER_WINDOW_S = 0.010;
  private static final double SPEECH_BELOW_CLICK = Math.pow(10, -4.0 / 20);
  private static final int FULL_SCALE = 32767;

  private final Random random;
  private final int rate_Hz;
  private final int channels;
  private final boolean inverted;
  private final boolean spoken;

  /** Motion: rest, run-up (exponential), steady with a small wander, coasting down. */
  private final double rest_s;

  private final double runUp_s;
  private final double steady_s;
  private final double period_s;
  private final double wander;
  private final double wander_s;

  private final List<Knock> knocks = new ArrayList<>();

  /** One burst of sound: when, how loud at its start, pitch and decay. */
  private record Knock(double at_s, double height, double pitch_Hz, double decay_s) {}

  private SpinSound(long seed, boolean spoken) {
    random = new Random(seed);
    this.spoken = spoken;
    rate_Hz = RATES_HZ[random.nextInt(RATES_HZ.length)];
    channels = 1 + random.nextInt(2);
    inverted = random.nextInt(4) == 0;
    rest_s = random.nextInt(4) == 0 ? 0 : between(0.5, 8);
    period_s = 0.7 * Math.pow(6 / 0.7, random.nextDouble());
    runUp_s = random.nextInt(5) == 0 ? 0 : period_s * between(0.3, 3);
    steady_s = Math.max(25, period_s * between(18, 60));
    wander = between(0, 0.0015);
    wander_s = between(10, 60);
    place();
  }

  /** With speech at 4 dB. */
  static SpinSound spoken(long seed) {
    return new SpinSound(seed, true);
  }

  static SpinSound quiet(long seed) {
    return new SpinSound(seed, false);
  }

  /** Somebody speaks, and nothing turns. */
  static SpinSound speechAlone(long seed) {
    SpinSound sound = new SpinSound(seed, true);
    double rms = sound.clickRms();
    sound.knocks.clear();
    sound.knocks.add(new Knock(-10, rms * 4, 1000, 0.004));
    return sound;
  }

  /** Turns per second at full speed: the mean over the steady stretch. */
  double turnsPerSecond() {
    double from_s = rest_s + 5 * runUp_s;
    double to_s = rest_s + 5 * runUp_s + steady_s;
    return (turnsAt(to_s) - turnsAt(from_s)) / (to_s - from_s);
  }

  double turnsAt(double time_s) {
    double t = time_s - rest_s;
    if (t <= 0) {
      return 0;
    }
    double risen = runUp_s > 0 ? t - runUp_s * (1 - Math.exp(-t / runUp_s)) : t;
    double w = 2 * Math.PI / wander_s;
    return (risen + wander / w * (1 - Math.cos(w * t))) / period_s;
  }

  double end_s() {
    return rest_s + 5 * runUp_s + steady_s;
  }

  double steadyFrom_s() {
    return rest_s + 5 * runUp_s;
  }

  double period_s() {
    return period_s;
  }

  @Override
  public String toString() {
    return "%d Hz, %d channel(s)%s, %.2f s a turn, rest %.1f s, run-up %.1f s, steady %.0f s%s"
        .formatted(
            rate_Hz,
            channels,
            channels == 2 && inverted ? " inverted" : "",
            period_s,
            rest_s,
            runUp_s,
            steady_s,
            spoken ? ", speech" : "");
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Puts the clicks: one a turn with jitter, 4 % missed, a bounce after 30 %. */
  private void place() {
    double pitch_Hz = Math.min(between(1200, 5000), 0.4 * rate_Hz);
    double decay_s = between(0.002, 0.006);
    double jitter_s = period_s * between(0.0002, 0.003);
    double offset = random.nextDouble();
    double loud = between(0.15, 0.6);
    double time_s = rest_s;
    for (int turn = 0; ; turn++) {
      time_s = timeOf(turn + offset, time_s);
      if (time_s > end_s()) {
        return;
      }
      if (random.nextDouble() < 0.04) {
        continue;
      }
      double at_s = Math.max(0.001, time_s + jitter_s * random.nextGaussian());
      double height = loud * between(0.7, 1.2);
      knocks.add(new Knock(at_s, height, pitch_Hz, decay_s));
      if (random.nextDouble() < 0.30) {
        double later_s = at_s + between(0.015, 0.15);
        double lower = height * between(0.3, 0.9);
        knocks.add(new Knock(later_s, lower, pitch_Hz, decay_s));
      }
    }
  }

  private double timeOf(double turns, double from_s) {
    double low = from_s;
    double high = end_s() + 100 * period_s;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (turnsAt(middle) < turns) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Writes the sound as 16-bit PCM, a second at a time. */
  void writeTo(Path file) throws IOException {
    int seconds = (int) Math.ceil(end_s() + 1);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
      out.write(header(seconds));
      Voice voice = spoken ? new Voice(random, rate_Hz, clickRms() * SPEECH_BELOW_CLICK) : null;
      double hiss = clickRms() * between(0.003, 0.05);
      for (int second = 0; second < seconds; second++) {
        out.write(secondOf(second, voice, hiss));
      }
    }
  }

  /** Root of the mean power of an average click in its first 10 ms. */
  private double clickRms() {
    double sum = 0;
    for (Knock knock : knocks) {
      double tau = knock.decay_s() / 2;
      double energy = knock.height() * knock.height() / 2 * tau;
      sum += energy * (1 - Math.exp(-MEAN_POWER_WINDOW_S / tau)) / MEAN_POWER_WINDOW_S;
    }
    return Math.sqrt(sum / Math.max(1, knocks.size()));
  }

  private byte[] secondOf(int second, @Nullable Voice voice, double hiss) {
    double[] sound = new double[rate_Hz];
    for (int i = 0; i < rate_Hz; i++) {
      sound[i] = hiss * random.nextGaussian() + (voice == null ? 0 : voice.next());
    }
    for (Knock knock : knocks) {
      add(sound, second, knock);
    }
    ByteBuffer bytes = ByteBuffer.allocate(2 * channels * rate_Hz).order(ByteOrder.LITTLE_ENDIAN);
    for (double value : sound) {
      short left = (short) Math.max(-FULL_SCALE, Math.min(FULL_SCALE, value * FULL_SCALE));
      bytes.putShort(left);
      if (channels == 2) {
        bytes.putShort((short) (inverted ? -left : left));
      }
    }
    return bytes.array();
  }

  private void add(double[] sound, int second, Knock knock) {
    double after_s = knock.at_s() - second;
    if (after_s > 1 || after_s < -20 * knock.decay_s()) {
      return;
    }
    int first = (int) Math.max(0, Math.ceil(after_s * rate_Hz));
    int last = (int) Math.min(rate_Hz, (after_s + 12 * knock.decay_s()) * rate_Hz);
    for (int i = first; i < last; i++) {
      double t = (double) i / rate_Hz - after_s;
      sound[i] +=
          knock.height()
              * Math.exp(-t / knock.decay_s())
              * Math.cos(2 * Math.PI * knock.pitch_Hz() * t);
    }
  }

  private byte[] header(int seconds) {
    int frame = 2 * channels;
    int data = seconds * rate_Hz * frame;
    return ByteBuffer.allocate(44)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put("RIFF".getBytes(StandardCharsets.US_ASCII))
        .putInt(36 + data)
        .put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII))
        .putInt(16)
        .putShort((short) 1)
        .putShort((short) channels)
        .putInt(rate_Hz)
        .putInt(rate_Hz * frame)
        .putShort((short) frame)
        .putShort((short) 16)
        .put("data".getBytes(StandardCharsets.US_ASCII))
        .putInt(data)
        .array();
  }

  /**
   * Somebody speaking: pulses of a voice through two resonances, hissing and bursting consonants,
   * syllables of 120 to 300 ms, pauses between sentences.
   */
  private static final class Voice {
    private final Random random;
    private final int rate_Hz;
    private final double rms;
    private final double[] state = new double[4];
    private double left_s;
    private double length_s = 1;
    private double pitch_Hz = 120;
    private double phase;
    private double f1_Hz = 500;
    private double f2_Hz = 1500;
    private Sort sort = Sort.PAUSE;
    private double power = 1e-12;
    private double heard_s;

    private enum Sort {
      VOWEL,
      HISS,
      BURST,
      PAUSE
    }

    Voice(Random random, int rate_Hz, double rms) {
      this.random = random;
      this.rate_Hz = rate_Hz;
      this.rms = rms;
    }

    double next() {
      left_s -= 1.0 / rate_Hz;
      if (left_s <= 0) {
        choose();
      }
      if (sort == Sort.PAUSE) {
        return 0;
      }
      double done = 1 - left_s / length_s;
      double shape = sort == Sort.BURST ? Math.exp(-4 * done) : Math.sin(Math.PI * done);
      double raw = shape * source();
      heard_s += 1.0 / rate_Hz;
      double share = 1.0 / (rate_Hz * Math.min(5, Math.max(0.2, heard_s)));
      power += share * (raw * raw - power);
      return rms * Math.max(-6, Math.min(6, raw / Math.sqrt(power)));
    }

    private void choose() {
      double draw = random.nextDouble();
      sort =
          draw < 0.5 ? Sort.VOWEL : draw < 0.68 ? Sort.HISS : draw < 0.84 ? Sort.BURST : Sort.PAUSE;
      length_s =
          switch (sort) {
            case VOWEL -> 0.12 + 0.18 * random.nextDouble();
            case HISS -> 0.05 + 0.10 * random.nextDouble();
            case BURST -> 0.015 + 0.03 * random.nextDouble();
            case PAUSE -> random.nextInt(4) == 0 ? 1.2 : 0.06;
          };
      left_s = length_s;
      pitch_Hz = 95 + 130 * random.nextDouble();
      f1_Hz = 280 + 500 * random.nextDouble();
      f2_Hz = 900 + 1500 * random.nextDouble();
    }

    private double source() {
      if (sort != Sort.VOWEL) {
        return 0.35 * random.nextGaussian();
      }
      phase += pitch_Hz / rate_Hz;
      double pulse = 0;
      if (phase >= 1) {
        phase -= 1;
        pulse = Math.sqrt(rate_Hz / pitch_Hz);
      }
      return resonance(0, f1_Hz, 90, pulse) + 0.5 * resonance(2, f2_Hz, 140, pulse);
    }

    private double resonance(int at, double centre_Hz, double width_Hz, double input) {
      double r = Math.exp(-Math.PI * width_Hz / rate_Hz);
      double b = 2 * r * Math.cos(2 * Math.PI * centre_Hz / rate_Hz);
      double out = (1 - r) * 4 * input + b * state[at] - r * r * state[at + 1];
      state[at + 1] = state[at];
      state[at] = out;
      return out;
    }
  }
}
