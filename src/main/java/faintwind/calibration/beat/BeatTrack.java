package faintwind.calibration.beat;

import faintwind.calibration.plan.Beat;

/**
 * The sound of a beat as samples. Every beat starts at its own sample, the whole number nearest to
 * beat · 60 · rate / beats a minute, so that nothing adds up: the beat cannot drift against the
 * sample clock by more than half a sample. The first beat of a turn is higher. The count-in, one
 * turn long, is softer.
 */
public final class BeatTrack implements SoundTrack {
  private static final double CLICK_S = 0.03;
  private static final double FADE_S = 0.006;
  private static final double HIGH_HZ = 1600;
  private static final double LOW_HZ = 1000;
  private static final double LOUD = 0.8;
  private static final double SOFT = 0.35;

  private final Beat beat;
  private final int rate_Hz;
  private final int countIn;
  private final int click;

  /**
   * A track.
   *
   * @param rate_Hz samples a second, 8000 to 192 000
   * @param countIn beats before the first that counts, from 0
   */
  public BeatTrack(Beat beat, int rate_Hz, int countIn) {
    if (rate_Hz < 8000 || rate_Hz > 192_000 || countIn < 0) {
      throw new IllegalArgumentException(
          "rate_Hz = " + rate_Hz + ", countIn = " + countIn + "; allowed 8000 to 192000, from 0");
    }
    this.beat = beat;
    this.rate_Hz = rate_Hz;
    this.countIn = countIn;
    this.click = (int) Math.round(CLICK_S * rate_Hz);
  }

  /** The sample at which a beat starts; beat 0 is the first of the count-in. */
  public long sampleOf(long beatNumber) {
    return Math.round(beatNumber * 60.0 * rate_Hz / beat.perMinute());
  }

  /** Time of the first beat that counts, from the first sample, s. */
  public double firstBeat_s() {
    return (double) sampleOf(countIn) / rate_Hz;
  }

  @Override
  public float[] samples(long from, int count) {
    float[] out = new float[count];
    long number = (long) Math.floor((double) from * beat.perMinute() / (60.0 * rate_Hz)) - 1;
    for (long b = Math.max(0, number); sampleOf(b) < from + count; b++) {
      long start = sampleOf(b);
      long first = Math.max(from, start);
      long last = Math.min(from + count, start + click);
      for (long i = first; i < last; i++) {
        out[(int) (i - from)] = sound(b, (int) (i - start));
      }
    }
    return out;
  }

  /** One sample of a click: a tone that starts at once at its crest and dies away. */
  private float sound(long beatNumber, int i) {
    boolean counting = beatNumber < countIn;
    boolean first = !counting && (beatNumber - countIn) % beat.aTurn() == 0;
    double t_s = (double) i / rate_Hz;
    double tone = Math.cos(2 * Math.PI * (first ? HIGH_HZ : LOW_HZ) * t_s);
    return (float) ((counting ? SOFT : LOUD) * tone * Math.exp(-t_s / FADE_S));
  }
}
