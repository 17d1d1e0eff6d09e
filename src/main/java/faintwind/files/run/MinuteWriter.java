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
  private static final String NAMES = "time_s,rows," + String.join(",", SpeedWriter.COLUMNS) + "\n";

  private final OutputStream out;

  private MinuteWriter(OutputStream out) {
    this.out = out;
  }

  /**
   * Writes the head.
   *
   * @param columns of the log, which may say when its time was zero
   * @param rehearsal whether the log comes from the virtual instrument
   */
  public static MinuteWriter begin(OutputStream out, LogColumns columns, boolean rehearsal)
      throws IOException {
    MinuteWriter writer = new MinuteWriter(out);
    if (rehearsal) {
      writer.text(SpeedWriter.rehearsal() + "\n");
    }
    if (columns.start().isPresent()) {
      String start = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(columns.start().get());
      writer.text(LogHead.START + " " + start + "\n");
    }
    writer.text(HEAD);
    writer.text(NAMES);
    return writer;
  }

  /** Writes one minute. */
  public void write(MinuteSpeed minute) throws IOException {
    String begin = String.valueOf(Math.round(minute.from_s()));
    text(begin + "," + minute.rows() + "," + SpeedWriter.cells(minute.speed()) + "\n");
  }

  private void text(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
