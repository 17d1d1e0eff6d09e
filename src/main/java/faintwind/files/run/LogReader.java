package faintwind.files.run;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.run.Possible;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.speed.LogSample;
import faintwind.files.CsvLine;
import faintwind.files.RowText;
import faintwind.files.TextLines;
import faintwind.files.table.TableSource;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * A field log row by row, in bounded memory, from a file or a live stream; each row is handed out
 * as soon as its line is complete. The head is judged as strictly as that of a run file; a row that
 * cannot be read is handed on without its numbers.
 *
 * <p>Blank lines between rows are rows that could not be read; blank lines at the end are not rows.
 * Not safe for two threads.
 */
public final class LogReader implements Closeable {
  private final InputStream in;
  private final TextLines lines;
  private final LogColumns columns;
  private final CsvLine cells;
  private final Possible possible;
  private final int time;
  private final int signal;
  private final int terminal;
  private final int air;
  private final int pressure;
  private final int humidity;
  private final int supply;
  private int blanks;
  private boolean rowWaits;

  private LogReader(InputStream in, TextLines lines, LogColumns columns, int terminal) {
    this.in = in;
    this.lines = lines;
    this.columns = columns;
    this.cells = new CsvLine(columns.delimiter());
    this.possible = Possible.of(columns.unit());
    this.time = columns.index(LogColumns.TIME);
    this.signal = columns.index(columns.unit().column());
    this.terminal = terminal;
    this.air = columns.index(LogColumns.AIR);
    this.pressure = columns.index(LogColumns.PRESSURE);
    this.humidity = columns.index(LogColumns.HUMIDITY);
    this.supply = columns.index(LogColumns.SUPPLY);
  }

  /**
   * Reads the head and waits before the first row. The stream is closed with the reader, or at once
   * where the head is refused.
   *
   * @param in the bytes, from their start
   * @param name how messages name the file
   * @param input kind of input the log was made through; a compensated meter's terminal temperature
   *     is taken from the column {@code terminal_C}, or from {@code air_C} where there is none
   */
  public static Checked<LogReader> open(InputStream in, String name, SignalChain.Input input)
      throws IOException {
    Checked<TableSource> source = TableSource.open(in, name);
    if (!(source instanceof Checked.Ok<TableSource> ok)) {
      return Checked.refused(source.problems());
    }
    TextLines lines = new TextLines(ok.value().in());
    return open(ok.value().in(), lines, LogHead.read(lines, name), name, input);
  }

  /** By a profile where there is one; else the lines must be those of a run file. */
  public static Checked<LogReader> open(
      InputStream in, String name, SignalChain.Input input, Optional<ImportProfile> profile)
      throws IOException {
    return profile.isPresent()
        ? openForeign(in, name, input, profile.get())
        : open(in, name, input);
  }

  /**
   * The same for a foreign log, read by a profile; a line that does not fit is a row that could not
   * be read. Its rows pass through as those of a run file, in the columns that the profile names.
   *
   * @param profile what its lines mean; refused where none of the first lines fits it
   */
  public static Checked<LogReader> openForeign(
      InputStream in, String name, SignalChain.Input input, ImportProfile profile)
      throws IOException {
    Checked<ForeignRows> opened =
        ForeignRows.open(in, profile, name, ForeignRows.Unreadable.EMPTY_ROW);
    if (!(opened instanceof Checked.Ok<ForeignRows> rows)) {
      return Checked.refused(opened.problems());
    }
    TextLines lines = new TextLines(rows.value(), profile.lines().headerLines());
    return open(rows.value(), lines, rows.value().head(), name, input);
  }

  private static Checked<LogReader> open(
      InputStream in,
      TextLines lines,
      Checked<LogColumns> head,
      String name,
      SignalChain.Input input)
      throws IOException {
    Checked<LogReader> opened =
        head.then(
            columns ->
                columns.terminal(input, name).map(at -> new LogReader(in, lines, columns, at)));
    if (!opened.isOk()) {
      in.close();
    }
    return opened;
  }

  public LogColumns columns() {
    return columns;
  }

  /** The next row; empty at the end of the log. */
  public Optional<LogRow> next() throws IOException {
    while (!rowWaits && lines.next()) {
      if (lines.isBlank()) {
        blanks++;
      } else {
        rowWaits = true;
      }
    }
    if (!rowWaits) {
      return Optional.empty();
    }
    if (blanks > 0) {
      blanks--;
      return Optional.of(unreadable(",".repeat(columns.names().size() - 1)));
    }
    rowWaits = false;
    return Optional.of(row());
  }

  /** What should be known of the rows read so far. */
  public List<Problem> notes() {
    return in instanceof ForeignRows rows ? rows.spread() : List.of();
  }

  private LogRow row() {
    cells.read(lines);
    if (cells.count() != columns.names().size() || !cells.isSound() || lines.isCut()) {
      return unreadable(RowText.fitted(lines.text(), cells, columns.names().size()));
    }
    int known = 0;
    double value = 0;
    if (finds(signal) && possible.allowsSignal(cells.found())) {
      value = cells.found();
      known |= LogSample.SIGNAL;
    }
    if (terminal >= 0 && known != 0) {
      known = finds(terminal) ? known : 0;
      value -= cells.found();
    }
    known |= finds(air, AirCell.TEMPERATURE) ? LogSample.TEMPERATURE : 0;
    double temperature_K = AirCell.TEMPERATURE.si(cells.found());
    known |= finds(pressure, AirCell.PRESSURE) ? LogSample.PRESSURE : 0;
    double pressure_Pa = AirCell.PRESSURE.si(cells.found());
    known |= finds(humidity, AirCell.HUMIDITY) ? LogSample.HUMIDITY : 0;
    double relativeHumidity = AirCell.HUMIDITY.si(cells.found());
    byte[] text = cells.hasCommas() ? lines.utf8() : utf8(RowText.rejoined(cells));
    known |= finds(time) ? LogSample.TIME : 0;
    double time_s = cells.found();
    known |= finds(supply) && possible.allowsSupply(cells.found()) ? LogSample.SUPPLY : 0;
    double supply_V = cells.found();
    return new LogRow(
        text,
        new LogSample(
            known, time_s, value, temperature_K, pressure_Pa, relativeHumidity, supply_V));
  }

  private boolean finds(int index, AirCell cell) {
    return finds(index) && cell.allows(cells.found());
  }

  private boolean finds(int index) {
    return index >= 0 && cells.find(index);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static LogRow unreadable(String text) {
    return new LogRow(utf8(text), new LogSample(0, 0, 0, 0, 0, 0, 0));
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
