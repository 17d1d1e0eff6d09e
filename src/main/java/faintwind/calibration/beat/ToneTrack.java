package faintwind.calibration.beat;

import java.util.OptionalDouble;

/**
 * A tone whose pitch can change while it sounds. It glides to a new pitch without a break in its
 * wave, and fades in and out, so that nothing clicks. Pitch and samples may be asked for by two
 * threads.
 */
public final class ToneTrack implements SoundTrack {
  private static final double GLIDE_S = 0.08;
  private static final double FADE_S = 0.02;
  private static final double LOUD = 0.25;

  private final int rate_Hz;
  private double phase;
  private double pitch_Hz;
  private double loudness;
  private volatile double wanted_Hz;

  /**
   * A silent track.
   *
   * @param rate_Hz samples a second
   */
  public ToneTrack(int rate_Hz) {
    this.rate_Hz = rate_Hz;
  }

  /** Sounds at a pitch from now on; empty for silence. */
  public void pitch(OptionalDouble wanted) {
    wanted_Hz = wanted.orElse(0);
  }

  @Override
  public float[] samples(long from, int count) {
    float[] out = new float[count];
    double wanted = wanted_Hz;
    double target = wanted > 0 ? LOUD : 0;
    for (int i = 0; i < count; i++) {
      if (wanted > 0) {
        pitch_Hz = loudness > 0 ? pitch_Hz + (wanted - pitch_Hz) / (GLIDE_S * rate_Hz) : wanted;
      }
      loudness += Math.max(-step(), Math.min(step(), target - loudness));
      phase += pitch_Hz / rate_Hz;
      phase -= Math.floor(phase);
      out[i] = (float) (loudness * Math.sin(2 * Math.PI * phase));
    }
    return out;
  }

  private double step() {
    return LOUD / (FADE_S * rate_Hz);
  }
}
