package faintwind.files.run;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.RowText;
import java.io.ByteArrayOutputStream;
import java.io.Flushable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Writes a converted log: the log's own columns as they stood, then {@code speed_m_s}, {@code
 * u95_m_s} and {@code flag}. Lines end with LF. Numbers have five decimals, 0.01 mm/s, far below
 * any uncertainty. Not safe for two threads; does not close the stream.
 */
public final class SpeedWriter implements Flushable {
  static final List<String> COLUMNS = List.of("speed_m_s", "u95_m_s", "flag");
  private static final int DECIMALS = 5;
  private static final long SCALE = 100_000;
  private static final long MOST_QUICK = 1L << 31;
  private static final long TENTH = 0xCCCCCCCDL;
  private static final int TENTH_SHIFT = 35;

  /** Room for what follows a row's text: two numbers, four signs. */
  private static final int MOST_ADDED = 80;

  private final OutputStream out;
  private final boolean replacesOld;
  private final TableForm form;
  private final byte[] digits = new byte[32];
  private byte[] line = new byte[256];
  private int filled;

  private SpeedWriter(OutputStream out, boolean replacesOld, TableForm form) {
    this.out = out;
    this.form = form;
    this.replacesOld = replacesOld;
  }

  /**
   * The line that stands before the header where a log comes from the virtual instrument: its
   * speeds are made up too.
   */
  public static String rehearsal() {
    return LogHead.REHEARSAL + " made up by the virtual instrument";
  }

  /**
   * Writes the header of a log with these columns; before it, where the log says so, the line that
   * tells when its time was zero, so that the output is a run file with a calendar too.
   */
  public static SpeedWriter begin(OutputStream out, LogColumns columns, TableForm form)
      throws IOException {
    SpeedWriter writer = new SpeedWriter(out, hasOld(columns), form);
    if (columns.start().isPresent()) {
      String start = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(columns.start().get());
      writer.text(LogHead.START + " " + start + "\n");
    }
    List<String> names = new ArrayList<>();
    passing(columns).forEach(name -> names.add(RowText.harmless(name)));
    names.addAll(COLUMNS);
    writer.text(form.row(String.join(",", names)) + "\n");
    return writer;
  }

  /**
   * Those of the added columns that a log has already and that cannot give way. The speeds that a
   * live recording ends with can: they are found anew.
   */
  public static List<String> alreadyIn(LogColumns columns) {
    return among(passing(columns));
  }

  /** Those of the added columns that are among these names. */
  public static List<String> among(List<String> names) {
    return COLUMNS.stream().filter(names::contains).toList();
  }

  private static List<String> passing(LogColumns columns) {
    List<String> names = columns.names();
    int own = names.size() - COLUMNS.size();
    return hasOld(columns) ? names.subList(0, own) : names;
  }

  private static boolean hasOld(LogColumns columns) {
    List<String> names = columns.names();
    int own = names.size() - COLUMNS.size();
    return own > 0 && names.subList(own, names.size()).equals(COLUMNS);
  }

  /** A row's text without the speeds that it ends with. */
  private static String withoutOld(String row) {
    int end = row.length();
    for (int i = 0; i < COLUMNS.size(); i++) {
      end = row.lastIndexOf(',', end - 1);
    }
    return row.substring(0, end);
  }

  /** The cells that a conversion adds to a row, without an end of line. */
  public static String cells(SpeedRow speed) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      new SpeedWriter(bytes, false, TableForm.POINTS).write("", speed);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail", e);
    }
    String line = bytes.toString(StandardCharsets.UTF_8);
    return line.substring(1, line.length() - 1);
  }

  /**
   * Writes one row.
   *
   * @param speed what was found for it
   */
  public void write(LogRow row, SpeedRow speed) throws IOException {
    if (!replacesOld && form == TableForm.POINTS && RowText.isSurelyHarmless(row.bytes())) {
      line(row.bytes(), speed);
    } else {
      write(row.text(), speed);
    }
  }

  private void write(String row, SpeedRow speed) throws IOException {
    String passing = RowText.harmlessRow(replacesOld ? withoutOld(row) : row);
    if (form == TableForm.POINTS) {
      line(passing.getBytes(StandardCharsets.UTF_8), speed);
    } else {
      text(form.row(passing + "," + cells(speed)) + "\n");
    }
  }

  private void line(byte[] passing, SpeedRow speed) throws IOException {
    filled = 0;
    put(passing);
    put(',');
    number(speed.speed_m_s());
    put(',');
    number(speed.u95_m_s());
    put(',');
    if (!speed.flags().isEmpty()) {
      put(SpeedFlag.text(speed.flags()).getBytes(StandardCharsets.UTF_8));
    }
    put('\n');
    out.write(line, 0, filled);
  }

  @Override
  public void flush() throws IOException {
    out.flush();
  }

  private void text(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private void put(byte[] bytes) {
    if (filled + bytes.length + MOST_ADDED > line.length) {
      line = Arrays.copyOf(line, 2 * (filled + bytes.length + MOST_ADDED));
    }
    System.arraycopy(bytes, 0, line, filled, bytes.length);
    filled += bytes.length;
  }

  private void put(char ascii) {
    line[filled++] = (byte) ascii;
  }

  private void number(OptionalDouble number) {
    if (number.isEmpty()) {
      return;
    }
    long left = Math.round(Math.min(1e9, Math.max(0, number.getAsDouble())) * SCALE);
    int at = digits.length;
    for (int i = 0; i < DECIMALS || left > 0 || i == DECIMALS; i++) {
      if (i == DECIMALS) {
        digits[--at] = '.';
      }
      // a tenth by multiplying, which is quicker and exact below 2³²
      long tenth = left < MOST_QUICK ? (left * TENTH) >>> TENTH_SHIFT : left / 10;
      digits[--at] = (byte) ('0' + (left - 10 * tenth));
      left = tenth;
    }
    System.arraycopy(digits, at, line, filled, digits.length - at);
    filled += digits.length - at;
  }
}
