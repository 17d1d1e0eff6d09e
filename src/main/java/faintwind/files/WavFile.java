package faintwind.files;

import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads a sound recording piece by piece as samples of one channel: whole numbers of 8 to 32 bits
 * or floating point of 32 or 64, any number of channels (their mean is taken), 8 to 192 kHz.
 */
public final class WavFile {
  private static final int PIECE = 16_384;

  /** No spin lasts longer; the marks of more would not be held in little memory. */
  private static final int MOST_HOURS = 12;

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
    Optional<Problem> trouble =
        InputFile.trouble(file, String.valueOf(file.getFileName()), Long.MAX_VALUE);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream bytes = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
      Checked<WavHead> head = WavHead.read(bytes, where);
      return head instanceof Checked.Ok<WavHead> ok
          ? sound(bytes, ok.value(), listening, where)
          : Checked.refused(head.problems());
    }
  }

  private static <L extends Listener> Checked<L> sound(
      InputStream bytes, WavHead head, Listening<L> listening, Where where) throws IOException {
    long most = MOST_HOURS * 3600L * head.rate_Hz();
    L listener = listening.at(head.rate_Hz());
    long frames = pour(bytes, head, most, listener);
    if (frames > most) {
      return Checked.refused(Problem.error("wav.too-long", where, String.valueOf(MOST_HOURS)));
    }
    return frames == 0
        ? Checked.refused(Problem.error("wav.no-sound", where, ""))
        : Checked.ok(listener, cutShort(head, frames, where));
  }

  private static List<Problem> cutShort(WavHead head, long frames, Where where) {
    return head.frames() <= frames
        ? List.of()
        : List.of(
            Problem.warning(
                "wav.cut-short", where, seconds(frames, head), seconds(head.frames(), head)));
  }

  private static String seconds(long frames, WavHead head) {
    return Numerals.places((double) frames / head.rate_Hz(), 1);
  }

  /** Frames that were heard; one piece more than the most where there are more. */
  private static long pour(InputStream in, WavHead head, long most, Listener listener)
      throws IOException {
    byte[] bytes = new byte[PIECE * head.frameBytes()];
    ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    Mono mono = new Mono(head.channels());
    double[][] channels = new double[head.channels()][PIECE];
    long left = head.frames() == WavHead.TO_THE_END ? Long.MAX_VALUE : head.frames();
    long frames = 0;
    while (left > 0 && frames <= most) {
      int wanted = (int) Math.min(PIECE, left);
      int count = in.readNBytes(bytes, 0, wanted * head.frameBytes()) / head.frameBytes();
      for (int i = 0; i < count * head.channels(); i++) {
        double value = sample(buffer, i * head.form().bytes(), head.form());
        channels[i % head.channels()][i / head.channels()] = value;
      }
      if (count > 0) {
        listener.hear(mono.of(channels, count), count);
      }
      frames += count;
      left = count < wanted ? 0 : left - count;
    }
    return frames;
  }

  /**
   * One channel out of many: their mean, those turned round whose sound is the first one's upside
   * down, since the mean would be silence.
   */
  private static final class Mono {
    private final double[] likeness;

    Mono(int channels) {
      likeness = new double[channels];
    }

    float[] of(double[][] channels, int count) {
      float[] mean = new float[count];
      for (int c = 0; c < channels.length; c++) {
        for (int i = 0; i < count; i++) {
          likeness[c] += channels[0][i] * channels[c][i];
        }
        double share = (likeness[c] < 0 ? -1.0 : 1.0) / channels.length;
        for (int i = 0; i < count; i++) {
          mean[i] += (float) (share * channels[c][i]);
        }
      }
      return mean;
    }
  }

  private static double sample(ByteBuffer buffer, int at, WavHead.Form form) {
    if (form.floating()) {
      double value = form.bits() == 32 ? buffer.getFloat(at) : buffer.getDouble(at);
      return Math.abs(value) < 1e6 ? value : 0;
    }
    long raw =
        switch (form.bits()) {
          case 8 -> (buffer.get(at) & 0xFF) - 128;
          case 16 -> buffer.getShort(at);
          case 24 -> (buffer.get(at + 2) << 16) | (buffer.getShort(at) & 0xFFFF);
          default -> buffer.getInt(at);
        };
    return raw / Math.scalb(1.0, form.bits() - 1);
  }
}
