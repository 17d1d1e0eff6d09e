package faintwind.calibration.beat;

/** A sound as samples, asked for piece by piece in their order. */
public interface SoundTrack {
  /**
   * Samples from −1 to 1.
   *
   * @param from first sample wanted, from 0
   * @param count how many
   */
  float[] samples(long from, int count);
}
