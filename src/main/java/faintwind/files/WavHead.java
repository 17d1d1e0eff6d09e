package faintwind.files;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The head of a WAV recording, up to its first sample (Microsoft and IBM, Multimedia Programming
 * Interface and Data Specifications 1.0, 1991, from memory; code 65534 and RF64 likewise).
 *
 * @param form how a sample is stored
 * @param channels how many stand side by side, from 1
 * @param rate_Hz samples a second
 * @param frames how many the head says, one sample of each channel together; {@link #TO_THE_END}
 *     where it does not say
 */
record WavHead(Form form, int channels, int rate_Hz, long frames) {
  static final long TO_THE_END = -1;

  private static final int LEAST_HZ = 8000;
  private static final int MOST_HZ = 192_000;
  private static final int MOST_CHANNELS = 64;
  private static final long UNKNOWN = 0xFFFF_FFFFL;
  private static final int EXTENSIBLE = 0xFFFE;

  /** How a sample is stored: little end first; 8 bits without a sign. */
  record Form(boolean floating, int bits) {
    int bytes() {
      return bits / 8;
    }

    private boolean known() {
      return floating ? bits == 32 || bits == 64 : List.of(8, 16, 24, 32).contains(bits);
    }
  }

  int frameBytes() {
    return channels * form.bytes();
  }

  /**
   * Reads up to the first sample.
   *
   * @return refused where it is no such recording, or of a form that is not read here
   * @throws IOException where the disk fails
   */
  static Checked<WavHead> read(InputStream in, Where where) throws IOException {
    try {
      String riff = tag(in);
      in.skipNBytes(4);
      if (!(riff.equals("RIFF") || riff.equals("RF64")) || !tag(in).equals("WAVE")) {
        return refused("wav.not-a-recording", where, "");
      }
      return chunks(in, where);
    } catch (EOFException e) {
      return refused("wav.not-a-recording", where, "");
    }
  }

  private static Checked<WavHead> chunks(InputStream in, Where where) throws IOException {
    Optional<ByteBuffer> format = Optional.empty();
    while (true) {
      String tag = tag(in);
      long length = UNKNOWN & little(in.readNBytes(4), 4).getInt();
      if (tag.equals("data")) {
        return format.isEmpty()
            ? refused("wav.not-a-recording", where, "")
            : of(format.get(), length, where);
      }
      if (tag.equals("fmt ")) {
        int kept = (int) Math.min(length, 40);
        format = Optional.of(little(in.readNBytes(kept), Math.max(16, kept)));
        length -= kept;
      }
      in.skipNBytes(length + (length & 1));
    }
  }

  private static Checked<WavHead> of(ByteBuffer format, long length, Where where) {
    int code = format.getShort(0) & 0xFFFF;
    int channels = format.getShort(2) & 0xFFFF;
    int rate_Hz = format.getInt(4);
    int bits = format.getShort(14) & 0xFFFF;
    if (code == EXTENSIBLE && format.limit() >= 26) {
      code = format.getShort(24) & 0xFFFF;
    }
    Form form = new Form(code == 3, bits);
    boolean even = (format.getShort(12) & 0xFFFF) == channels * form.bytes();
    boolean plain = code == 1 || code == 3;
    if (!plain || !form.known() || !even) {
      return refused("wav.format", where, code + ", " + bits);
    }
    if (channels < 1 || channels > MOST_CHANNELS) {
      return refused("wav.not-a-recording", where, "");
    }
    if (rate_Hz < LEAST_HZ || rate_Hz > MOST_HZ) {
      return refused("wav.rate", where, Integer.toUnsignedString(rate_Hz));
    }
    long frames = length == UNKNOWN ? TO_THE_END : length / ((long) channels * form.bytes());
    return Checked.ok(new WavHead(form, channels, rate_Hz, frames));
  }

  private static Checked<WavHead> refused(String id, Where where, String found) {
    return Checked.refused(Problem.error(id, where, found));
  }

  private static String tag(InputStream in) throws IOException {
    return new String(little(in.readNBytes(4), 4).array(), StandardCharsets.ISO_8859_1);
  }

  private static ByteBuffer little(byte[] bytes, int least) throws EOFException {
    if (bytes.length < least) {
      throw new EOFException();
    }
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }
}
