package faintwind.files.run;

import faintwind.calibration.speed.MinuteSpeed;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;

/**
 * Writes the means of whole minutes: when each begins on the log's clock, how many rows lie in it,
 * then the columns of a converted log. Lines end with LF. Does not close the stream.
 */
public final class MinuteWriter {
  private static final String HEAD =
      "# speed_m_s: mean over 60 s from time_s on, of speeds that are not averaged before\n";
  private static final String NAMES = "time_s,rows," + String.join(",", SpeedWriter.COLUMNS);

  private final OutputStream out;
  private final TableForm form;

  private MinuteWriter(OutputStream out, TableForm form) {
    this.out = out;
    this.form = form;
  }

  /**
   * Writes the head.
   *
   * @param columns of the log, which may say when its time was zero
   * @param rehearsal whether the log comes from the virtual instrument
   * @param form what stands between the cells
   */
  public static MinuteWriter begin(
      OutputStream out, LogColumns columns, boolean rehearsal, TableForm form) throws IOException {
    MinuteWriter writer = new MinuteWriter(out, form);
    if (rehearsal) {
      writer.text(SpeedWriter.rehearsal() + "\n");
    }
    if (columns.start().isPresent()) {
      String start = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(columns.start().get());
      writer.text(LogHead.START + " " + start + "\n");
    }
    writer.text(HEAD);
    writer.text(form.row(NAMES) + "\n");
    return writer;
  }

  /** Writes one minute. */
  public void write(MinuteSpeed minute) throws IOException {
    String begin = String.valueOf(Math.round(minute.from_s()));
    String cells = begin + "," + minute.rows() + "," + SpeedWriter.cells(minute.speed());
    text(form.row(cells) + "\n");
  }

  private void text(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
