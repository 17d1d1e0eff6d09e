package faintwind.files.instrument;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The bytes of one line of a journal, without its line feed. A line of ASCII letters is read by its
 * bytes, which takes less than by its text. Any other is read by its text: a byte that is no UTF-8
 * is replaced there, the parser of bytes would refuse it, and a line must stay the entry it is.
 */
final class RawLine {
  private static final String OBJECT = "{\"";

  private final byte[] bytes;
  private final int from;
  private final int to;

  /** Null where all is ASCII. */
  private final @Nullable String text;

  /** The bytes from one place to before another; they are not copied and must stay as they are. */
  RawLine(byte[] bytes, int from, int to) {
    this.bytes = bytes;
    this.from = from;
    this.to = to;
    int all = 0;
    for (int i = from; i < to; i++) {
      all |= bytes[i];
    }
    this.text = all >= 0 ? null : new String(bytes, from, to - from, StandardCharsets.UTF_8);
  }

  /** As UTF-8. */
  String text() {
    return text == null ? ascii(from, to) : text;
  }

  int length() {
    return text == null ? to - from : text.length();
  }

  /** A piece of it. */
  String text(int start, int end) {
    return text == null ? ascii(from + start, from + end) : text.substring(start, end);
  }

  /** Whether some letters stand at a place. */
  boolean has(int start, String ascii) {
    if (text != null) {
      return text.startsWith(ascii, start);
    }
    boolean has = start >= 0 && from + start + ascii.length() <= to;
    for (int i = 0; has && i < ascii.length(); i++) {
      has = bytes[from + start + i] == ascii.charAt(i);
    }
    return has;
  }

  /**
   * The JSON in it; by its bytes only where they begin as an object, so that no other coding is
   * guessed from them.
   *
   * @throws IOException where it is none
   */
  JsonNode json(ObjectMapper mapper) throws IOException {
    return text == null && has(0, OBJECT)
        ? mapper.readTree(bytes, from, to - from)
        : mapper.readTree(text());
  }

  private String ascii(int start, int end) {
    return new String(bytes, start, end - start, StandardCharsets.US_ASCII);
  }
}
