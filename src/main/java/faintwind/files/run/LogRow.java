package faintwind.files.run;

import faintwind.calibration.speed.LogSample;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;

/**
 * One row of a field log, as far as it could be read. A row whose time or signal is not there
 * cannot be converted, but is still handed on.
 */
public final class LogRow {
  private final byte[] text;
  private final LogSample read;

  /**
   * A row.
   *
   * @param text the row as it stood, in UTF-8; not copied
   * @param read its numbers, the signal in the file's unit
   */
  LogRow(byte[] text, LogSample read) {
    this.text = text;
    this.read = read;
  }

  /**
   * The row as it stood, for passing through: exactly as many cells as the header has; cells that
   * were missing are added empty, cells too many stand together in the last one.
   */
  public String text() {
    return new String(text, StandardCharsets.UTF_8);
  }

  /** The same in UTF-8. */
  byte[] bytes() {
    return text;
  }

  /** Its numbers; the signal in the file's unit, for a compensated meter less its terminals'. */
  public LogSample read() {
    return read;
  }

  /** Time on the file's clock, s. */
  public OptionalDouble time_s() {
    return read.time_s();
  }

  /** In the file's unit; for a compensated meter less its terminal temperature. */
  public OptionalDouble signal() {
    return read.signal();
  }
}
