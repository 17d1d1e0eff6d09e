package faintwind.calibration.beat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** A synthesised recording of a bench: clicks in noise, hum and speech-like bursts. */
final class SoundScene {
  private static final double CLICK_RMS = 0.1;
  private static final double CLICK_S = 0.01;

  private final int rate_Hz;
  private final RandomGenerator random;
  private final float[] samples;
  private final List<Double> clicks = new ArrayList<>();

  SoundScene(int rate_Hz, double length_s, long seed) {
    this.rate_Hz = rate_Hz;
    random = new Well19937c(seed);
    samples = new float[(int) (rate_Hz * length_s)];
  }

  float[] samples() {
    return samples;
  }

  /** True times of the clicks, s. */
  List<Double> clicks() {
    return clicks;
  }

  /** Clicks at a period with a hand's scatter; a click is a short burst of noise or a tone. */
  SoundScene clicks(double period_s, double scatter_s, double tone_Hz) {
    for (int k = 0; (k + 1.5) * period_s < (double) samples.length / rate_Hz; k++) {
      click((k + 1) * period_s + scatter_s * random.nextGaussian(), tone_Hz);
    }
    return this;
  }

  /** One click whose root mean square over its first hundredth of a second is 0.1. */
  SoundScene click(double time_s, double tone_Hz) {
    int from = (int) Math.round(time_s * rate_Hz);
    int count = (int) (4 * CLICK_S * rate_Hz);
    double[] shape = new double[count];
    double energy = 0;
    for (int i = 0; i < count; i++) {
      double t_s = (double) i / rate_Hz;
      double carrier = tone_Hz > 0 ? Math.cos(2 * Math.PI * tone_Hz * t_s) : random.nextGaussian();
      shape[i] = carrier * Math.exp(-t_s / (CLICK_S / 2));
      energy += t_s < CLICK_S ? shape[i] * shape[i] : 0;
    }
    double scale = CLICK_RMS / Math.sqrt(energy / (CLICK_S * rate_Hz));
    for (int i = 0; i < count && from + i < samples.length; i++) {
      samples[from + i] += (float) (scale * shape[i]);
    }
    clicks.add((double) from / rate_Hz);
    return this;
  }

  /** White noise so that a click stands this far above it, dB. */
  SoundScene noise(double snr_dB) {
    double rms = CLICK_RMS * Math.pow(10, -snr_dB / 20);
    for (int i = 0; i < samples.length; i++) {
      samples[i] += (float) (rms * random.nextGaussian());
    }
    return this;
  }

  /** Hum of the mains with harmonics up to the fifteenth, the first ten times a click's level. */
  SoundScene hum(double mains_Hz) {
    for (int i = 0; i < samples.length; i++) {
      double t_s = (double) i / rate_Hz;
      for (int h = 1; h <= 15; h += 2) {
        samples[i] +=
            (float) (10 * CLICK_RMS / (h * h) * Math.sin(2 * Math.PI * mains_Hz * h * t_s));
      }
    }
    return this;
  }

  /**
   * Syllables: pulses of a voice at 90–220 Hz that ring at three formants, swelling and dying
   * within 0.1–0.4 s, together a share of the time.
   */
  SoundScene speech(double share, double level) {
    double t_s = 0.2;
    while (t_s < (double) samples.length / rate_Hz - 1) {
      double length_s = 0.1 + 0.3 * random.nextDouble();
      syllable(t_s, length_s, level * CLICK_RMS);
      t_s += length_s / share * (0.5 + random.nextDouble());
    }
    return this;
  }

  private void syllable(double start_s, double length_s, double rms) {
    double pitch_Hz = 90 + 130 * random.nextDouble();
    double[] formants = {500, 1500, 2500};
    int count = (int) (length_s * rate_Hz);
    double[] shape = new double[count];
    double energy = 0;
    for (int i = 0; i < count; i++) {
      double sincePulse_s = (i / (double) rate_Hz * pitch_Hz % 1) / pitch_Hz;
      double swell = Math.sin(Math.PI * i / count);
      for (double f : formants) {
        shape[i] += Math.sin(2 * Math.PI * f * sincePulse_s) * Math.exp(-sincePulse_s / 0.004);
      }
      shape[i] *= swell;
      energy += shape[i] * shape[i];
    }
    double scale = rms / Math.sqrt(energy / count);
    int from = (int) (start_s * rate_Hz);
    for (int i = 0; i < count && from + i < samples.length; i++) {
      samples[from + i] += (float) (scale * shape[i]);
    }
  }
}
