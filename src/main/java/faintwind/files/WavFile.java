package faintwind.files;

import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioFormat.Encoding;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/**
 * Reads a sound recording piece by piece as samples of one channel: whole numbers of 8 to 32 bits
 * or floating point of 32 or 64, any number of channels (their mean is taken), 8 to 192 kHz.
 */
public final class WavFile {
  private static final int PIECE = 16_384;
  private static final int LEAST_HZ = 8000;
  private static final int MOST_HZ = 192_000;

  private WavFile() {}

  /** Takes the samples of a recording in order. */
  @FunctionalInterface
  public interface Listener {
    /** The first {@code count} of these, from −1 to 1. */
    void hear(float[] samples, int count);
  }

  /** Makes what listens, once the rate is known. */
  @FunctionalInterface
  public interface Listening<L extends Listener> {
    L at(int rate_Hz);
  }

  /**
   * Reads the whole recording.
   *
   * @return what listened; noted where the file ends before its header says; refused where it is no
   *     such recording
   * @throws IOException where the disk fails
   */
  public static <L extends Listener> Checked<L> read(Path file, Listening<L> listening)
      throws IOException {
    Where where = Where.file(String.valueOf(file.getFileName()));
    if (!Files.isRegularFile(file)) {
      return Checked.refused(Problem.error("file.missing", where, ""));
    }
    try (InputStream bytes = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
        AudioInputStream sound = AudioSystem.getAudioInputStream(bytes)) {
      AudioFormat format = sound.getFormat();
      Optional<Problem> unfit = unfit(format, where);
      if (unfit.isPresent()) {
        return Checked.refused(unfit.get());
      }
      L listener = listening.at(Math.round(format.getSampleRate()));
      long frames = pour(sound, format, listener);
      return frames == 0
          ? Checked.refused(Problem.error("wav.no-sound", where, ""))
          : Checked.ok(listener, cutShort(sound, format, frames, where));
    } catch (UnsupportedAudioFileException | EOFException e) {
      return Checked.refused(Problem.error("wav.not-a-recording", where, ""));
    }
  }

  private static Optional<Problem> unfit(AudioFormat format, Where where) {
    boolean whole =
        format.getEncoding().equals(Encoding.PCM_SIGNED)
            || format.getEncoding().equals(Encoding.PCM_UNSIGNED);
    boolean floating = format.getEncoding().equals(Encoding.PCM_FLOAT);
    int bits = format.getSampleSizeInBits();
    boolean known =
        (whole && List.of(8, 16, 24, 32).contains(bits))
            || (floating && List.of(32, 64).contains(bits));
    if (!known || format.getFrameSize() != format.getChannels() * (bits / 8)) {
      return Optional.of(Problem.error("wav.format", where, format.toString()));
    }
    boolean rate = format.getSampleRate() >= LEAST_HZ && format.getSampleRate() <= MOST_HZ;
    return rate
        ? Optional.empty()
        : Optional.of(Problem.error("wav.rate", where, Numerals.places(format.getSampleRate(), 0)));
  }

  private static List<Problem> cutShort(
      AudioInputStream sound, AudioFormat format, long frames, Where where) {
    long declared = sound.getFrameLength();
    return declared <= frames
        ? List.of()
        : List.of(
            Problem.warning(
                "wav.cut-short", where, seconds(frames, format), seconds(declared, format)));
  }

  private static String seconds(long frames, AudioFormat format) {
    return Numerals.places(frames / format.getSampleRate(), 1);
  }

  private static long pour(AudioInputStream sound, AudioFormat format, Listener listener)
      throws IOException {
    byte[] bytes = new byte[PIECE * format.getFrameSize()];
    float[] samples = new float[PIECE];
    ByteOrder order = format.isBigEndian() ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
    ByteBuffer buffer = ByteBuffer.wrap(bytes).order(order);
    long frames = 0;
    int length;
    while ((length = sound.readNBytes(bytes, 0, bytes.length)) >= format.getFrameSize()) {
      int count = length / format.getFrameSize();
      for (int i = 0; i < count; i++) {
        samples[i] = mono(buffer, i * format.getFrameSize(), format);
      }
      listener.hear(samples, count);
      frames += count;
    }
    return frames;
  }

  private static float mono(ByteBuffer buffer, int at, AudioFormat format) {
    int width = format.getSampleSizeInBits() / 8;
    double sum = 0;
    for (int c = 0; c < format.getChannels(); c++) {
      sum += sample(buffer, at + c * width, format);
    }
    return (float) (sum / format.getChannels());
  }

  private static double sample(ByteBuffer buffer, int at, AudioFormat format) {
    int bits = format.getSampleSizeInBits();
    if (format.getEncoding().equals(Encoding.PCM_FLOAT)) {
      double value = bits == 32 ? buffer.getFloat(at) : buffer.getDouble(at);
      return Double.isFinite(value) ? value : 0;
    }
    boolean unsigned = format.getEncoding().equals(Encoding.PCM_UNSIGNED);
    long raw =
        switch (bits) {
          case 8 -> buffer.get(at);
          case 16 -> buffer.getShort(at);
          case 24 -> threeBytes(buffer, at);
          default -> buffer.getInt(at);
        };
    double full = Math.scalb(1.0, bits - 1);
    double offset = unsigned ? (raw < 0 ? full : -full) : 0;
    return (raw + offset) / full;
  }

  private static long threeBytes(ByteBuffer buffer, int at) {
    boolean big = buffer.order() == ByteOrder.BIG_ENDIAN;
    long high = buffer.get(big ? at : at + 2);
    int middle = buffer.get(at + 1) & 0xFF;
    int low = buffer.get(big ? at + 2 : at) & 0xFF;
    return (high << 16) | (middle << 8) | low;
  }
}
