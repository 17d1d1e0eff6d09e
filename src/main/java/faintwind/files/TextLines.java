package faintwind.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * The lines of a text file as bytes, one at a time, in bounded memory. LF and CRLF both end a line;
 * a byte-order mark of UTF-8 at the start is taken off. A line is handed out as soon as its end has
 * been read, so a live stream is not held back.
 *
 * <p>{@link #next} moves to the next line; {@link #bytes}, {@link #start} and {@link #end} are then
 * valid until the next call.
 */
public final class TextLines {
  /** A longer line is cut here and marked; no table of readings has one. */
  public static final int LONGEST = 1 << 16;

  private final InputStream in;
  private byte[] buffer = new byte[1 << 17];
  private int filled;
  private int start;
  private int end;
  private int nextStart;
  private long number;
  private boolean finished;
  private boolean cut;
  private boolean torn;
  private boolean plain;

  public TextLines(InputStream in) {
    this(in, 0);
  }

  /** Lines that stand after {@code before} others. */
  public TextLines(InputStream in, long before) {
    this.in = in;
    this.number = before;
  }

  /** Moves to the next line; false where there is none. */
  public boolean next() throws IOException {
    cut = false;
    plain = true;
    int from = nextStart;
    int search = from;
    while (true) {
      int found = indexOfLineEnd(search);
      if (found >= 0) {
        take(from, found, found + 1);
        return true;
      }
      search = filled;
      if (filled - from > LONGEST) {
        return takeCut(from);
      }
      if (from > 0 && filled == buffer.length) {
        search -= from;
        shift(from);
        from = 0;
      }
      if (!fill()) {
        if (filled == from) {
          return false;
        }
        take(from, filled, filled);
        return true;
      }
    }
  }

  /** Whether the line ends with the file and without a line end, as one that a crash cut off. */
  public boolean isTorn() {
    return torn;
  }

  private boolean takeCut(int from) throws IOException {
    byte[] head = Arrays.copyOfRange(buffer, from, from + LONGEST);
    int found = -1;
    filled = 0;
    while (found < 0 && fill()) {
      found = indexOfLineEnd(0);
      if (found < 0) {
        filled = 0;
      }
    }
    byte[] rest = found < 0 ? new byte[0] : Arrays.copyOfRange(buffer, found + 1, filled);
    System.arraycopy(head, 0, buffer, 0, head.length);
    keepRest(head.length, rest);
    take(0, head.length, head.length);
    cut = true;
    plain = false;
    return true;
  }

  private void keepRest(int at, byte[] rest) {
    if (at + rest.length > buffer.length) {
      buffer = Arrays.copyOf(buffer, at + rest.length);
    }
    System.arraycopy(rest, 0, buffer, at, rest.length);
    filled = at + rest.length;
  }

  private void take(int from, int to, int next) {
    number++;
    start = from;
    end = to > from && buffer[to - 1] == '\r' ? to - 1 : to;
    nextStart = next;
    torn = to == next;
    if (number == 1 && end - start >= 3 && hasMark(start)) {
      start += 3;
    }
  }

  private boolean hasMark(int at) {
    return buffer[at] == (byte) 0xEF
        && buffer[at + 1] == (byte) 0xBB
        && buffer[at + 2] == (byte) 0xBF;
  }

  private void shift(int from) {
    System.arraycopy(buffer, from, buffer, 0, filled - from);
    filled -= from;
    nextStart = 0;
  }

  private boolean fill() throws IOException {
    if (finished) {
      return false;
    }
    int count = in.read(buffer, filled, buffer.length - filled);
    if (count < 0) {
      finished = true;
      return false;
    }
    filled += count;
    return true;
  }

  private int indexOfLineEnd(int from) {
    byte[] bytes = buffer;
    int any = 0;
    boolean quoted = false;
    int i = from;
    for (; i < filled && bytes[i] != '\n'; i++) {
      any |= bytes[i];
      quoted |= bytes[i] == '"';
    }
    plain &= any >= 0 && !quoted;
    return i < filled ? i : -1;
  }

  /** Whether this line is of ASCII and has no quotation mark, as nearly every one is. */
  boolean isPlain() {
    return plain;
  }

  public byte[] bytes() {
    return buffer;
  }

  public int start() {
    return start;
  }

  public int end() {
    return end;
  }

  /** Number of this line, from 1. */
  public int number() {
    return (int) Math.min(number, Integer.MAX_VALUE);
  }

  /** Whether this line was longer than {@link #LONGEST}. */
  public boolean isCut() {
    return cut;
  }

  /** Whether this line holds nothing but blanks. */
  public boolean isBlank() {
    for (int i = start; i < end; i++) {
      if (buffer[i] != ' ' && buffer[i] != '\t') {
        return false;
      }
    }
    return true;
  }

  public boolean contains(char c) {
    for (int i = start; i < end; i++) {
      if (buffer[i] == c) {
        return true;
      }
    }
    return false;
  }

  /** This line as text, see {@link #decoded}. */
  public String text() {
    return plain
        ? new String(buffer, start, end - start, StandardCharsets.ISO_8859_1)
        : decoded(buffer, start, end);
  }

  /** The same in UTF-8. */
  public byte[] utf8() {
    return plain ? Arrays.copyOfRange(buffer, start, end) : text().getBytes(StandardCharsets.UTF_8);
  }

  /** Whether this line is well-formed UTF-8. */
  public boolean isUtf8() {
    return utf8(buffer, start, end).isPresent();
  }

  /** Bytes as text: UTF-8, and Windows-1252 where they are not well-formed UTF-8. */
  public static String decoded(byte[] bytes, int from, int to) {
    return utf8(bytes, from, to)
        .orElseGet(() -> new String(bytes, from, to - from, Charset.forName("windows-1252")));
  }

  private static Optional<String> utf8(byte[] bytes, int from, int to) {
    boolean plain = true;
    for (int i = from; i < to; i++) {
      plain &= bytes[i] >= 0;
    }
    if (plain) {
      return Optional.of(new String(bytes, from, to - from, StandardCharsets.US_ASCII));
    }
    try {
      ByteBuffer line = ByteBuffer.wrap(bytes, from, to - from);
      return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(line).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }
}
