package faintwind.device;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Lines from bytes as they arrive, ended by LF, CR or both; a line without an end at the end of the
 * bytes is torn and not given. A line longer than 65 536 bytes is cut: the rest of it is thrown
 * away, so that memory stays flat whatever arrives.
 */
final class ByteLines {
  private static final int LONGEST = 1 << 16;

  private final InputStream in;
  private final byte[] chunk = new byte[4096];
  private byte[] line = new byte[256];
  private int length;
  private int at;
  private int filled;
  private boolean afterReturn;

  ByteLines(InputStream in) {
    this.in = in;
  }

  /** Waits for the next whole line; empty at the end of the bytes. */
  Optional<String> next() throws IOException {
    while (true) {
      while (at < filled) {
        byte b = chunk[at++];
        boolean second = afterReturn && b == '\n';
        afterReturn = b == '\r';
        if (!second && (b == '\n' || b == '\r')) {
          return Optional.of(taken());
        }
        if (!second) {
          keep(b);
        }
      }
      at = 0;
      filled = 0; // a read that fails leaves nothing to be read twice
      filled = Math.max(0, in.read(chunk, 0, chunk.length));
      if (filled == 0) {
        return Optional.empty();
      }
    }
  }

  private String taken() {
    String text = new String(line, 0, length, StandardCharsets.UTF_8);
    length = 0;
    return text;
  }

  private void keep(byte b) {
    if (length == LONGEST) {
      return;
    }
    if (length == line.length) {
      line = Arrays.copyOf(line, Math.min(LONGEST, length * 2));
    }
    line[length++] = b;
  }
}
