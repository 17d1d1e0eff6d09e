package faintwind.files.table;

import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A table's bytes as lines of text in UTF-8: UTF-16 is brought to it, a sheet becomes lines with
 * commas, decimal points and ISO 8601 dates, so that the row of a sheet is the line of the same
 * number. Lines of Windows-1252 pass as they are; {@link faintwind.files.TextLines} tells them. A
 * text is not read ahead beyond its first bytes, so a live stream is not held back.
 *
 * @param in the lines
 * @param form what the bytes were
 */
public record TableSource(InputStream in, Form form) implements Closeable {
  private static final int LOOKED_AT_BYTES = 8;
  private static final int LARGEST_SHEET_BYTES = 64 << 20;
  private static final byte[] OLD_SHEET = bytes(0xD0, 0xCF, 0x11, 0xE0);
  private static final byte[] ZIP = bytes('P', 'K', 3, 4);

  /** What a table's bytes are. */
  public enum Form {
    UTF_8("UTF-8"),
    WINDOWS_1252("Windows-1252"),
    UTF_16("UTF-16"),
    SHEET("a sheet");

    private final String word;

    Form(String word) {
      this.word = word;
    }

    /** As a message names it. */
    public String word() {
      return word;
    }
  }

  /**
   * Looks at the first bytes. The stream is closed with the source, or at once where it is refused.
   *
   * @param name how messages name the file
   */
  public static Checked<TableSource> open(InputStream in, String name) throws IOException {
    byte[] head = in.readNBytes(LOOKED_AT_BYTES);
    InputStream whole = new SequenceInputStream(new ByteArrayInputStream(head), in);
    if (begins(head, OLD_SHEET)) {
      in.close();
      return Checked.refused(Problem.error("table.old-sheet", Where.file(name), ""));
    }
    if (begins(head, ZIP)) {
      try (whole) {
        return sheet(whole.readNBytes(LARGEST_SHEET_BYTES + 1), name);
      }
    }
    Charset wide = wide(head);
    return Checked.ok(
        wide.equals(StandardCharsets.UTF_8)
            ? new TableSource(whole, Form.UTF_8)
            : new TableSource(new WideText(whole, wide), Form.UTF_16));
  }

  private static Checked<TableSource> sheet(byte[] bytes, String name) throws IOException {
    if (bytes.length > LARGEST_SHEET_BYTES) {
      String allowed = String.valueOf(LARGEST_SHEET_BYTES >> 20);
      return Checked.refused(Problem.error("table.sheet-too-large", Where.file(name), "", allowed));
    }
    return Sheets.lines(bytes, name)
        .map(lines -> new TableSource(new ByteArrayInputStream(lines), Form.SHEET));
  }

  /** UTF-16 by its mark, or by the zero bytes that plain letters have in it. */
  private static Charset wide(byte[] head) {
    if (head.length < 4) {
      return StandardCharsets.UTF_8;
    }
    boolean little = begins(head, bytes(0xFF, 0xFE)) || (zeros(head, 1) && !zeros(head, 0));
    boolean big = begins(head, bytes(0xFE, 0xFF)) || (zeros(head, 0) && !zeros(head, 1));
    if (little) {
      return StandardCharsets.UTF_16LE;
    }
    return big ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
  }

  private static boolean zeros(byte[] head, int from) {
    boolean all = true;
    for (int i = from; i < head.length; i += 2) {
      all &= head[i] == 0;
    }
    return all;
  }

  private static boolean begins(byte[] head, byte[] mark) {
    return head.length >= mark.length && Arrays.equals(head, 0, mark.length, mark, 0, mark.length);
  }

  private static byte[] bytes(int... values) {
    byte[] all = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      all[i] = (byte) values[i];
    }
    return all;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
