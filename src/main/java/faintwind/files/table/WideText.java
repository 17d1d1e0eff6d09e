package faintwind.files.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** UTF-16 as UTF-8, without its byte-order mark, as soon as it arrives. */
final class WideText extends InputStream {
  private static final char MARK = '\uFEFF';

  private final Reader reader;
  private final char[] letters = new char[1 << 12];
  private byte[] ready = new byte[0];
  private int given;
  private int kept;
  private boolean begun;

  WideText(InputStream in, Charset wide) {
    this.reader = new InputStreamReader(in, wide);
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] target, int from, int length) throws IOException {
    while (given == ready.length) {
      int count = reader.read(letters, kept, letters.length - kept);
      if (count < 0) {
        return -1;
      }
      take(kept + count);
    }
    int count = Math.min(length, ready.length - given);
    System.arraycopy(ready, given, target, from, count);
    given += count;
    return count;
  }

  private void take(int filled) {
    int first = !begun && letters[0] == MARK ? 1 : 0;
    begun = true;
    // the first half of a pair waits for its second
    kept = Character.isHighSurrogate(letters[filled - 1]) ? 1 : 0;
    int end = filled - kept;
    ready = new String(letters, first, Math.max(0, end - first)).getBytes(StandardCharsets.UTF_8);
    given = 0;
    if (kept > 0) {
      letters[0] = letters[end];
    }
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
