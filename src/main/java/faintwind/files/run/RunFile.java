package faintwind.files.run;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.WallClock;
import faintwind.calibration.run.Possible;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.files.CsvLine;
import faintwind.files.InputFile;
import faintwind.files.NumberCell;
import faintwind.files.ProblemList;
import faintwind.files.TextLines;
import faintwind.files.table.TableSource;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Reads a run file of a calibration whole: CSV with {@code time_s} and a signal, format in
 * docs/formats/run-file.md. Strict: a row that cannot be read, or whose time does not increase, is
 * refused with its line. A row whose signal cell is empty is passed over; a number of the air that
 * no air can have is left out; both are told as notes.
 */
public final class RunFile {
  /** A longer file cannot be one run of a calibration. */
  static final long LARGEST_BYTES = 1L << 30;

  private static final int LARGEST_ROWS = 20_000_000;

  private final TextLines lines;
  private final LogColumns columns;
  private final String file;
  private final int terminal;
  private final ProblemList problems = new ProblemList();
  private final CsvLine cells;
  private final GrowingSeries signal = new GrowingSeries();
  private final Map<AirCell, GrowingSeries> air = new EnumMap<>(AirCell.class);
  private final GrowingSeries supply = new GrowingSeries();
  private OptionalDouble last_s = OptionalDouble.empty();

  private RunFile(TextLines lines, LogColumns columns, String file, int terminal) {
    this.lines = lines;
    this.columns = columns;
    this.file = file;
    this.cells = new CsvLine(columns.delimiter());
    this.terminal = terminal;
  }

  /**
   * Reads a file.
   *
   * @param path where it is
   * @param name how messages name it
   * @param input kind of input; from the signal of a compensated meter its terminal temperature is
   *     taken off, see {@link LogReader#open}
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<Recording> read(Path path, String name, SignalChain.Input input)
      throws IOException {
    Optional<Problem> trouble = InputFile.trouble(path, name, LARGEST_BYTES);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream in = Files.newInputStream(path)) {
      return read(in, name, input);
    }
  }

  static Checked<Recording> read(InputStream in, String name, SignalChain.Input input)
      throws IOException {
    Checked<TableSource> source = TableSource.open(in, name);
    if (!(source instanceof Checked.Ok<TableSource> ok)) {
      return Checked.refused(source.problems());
    }
    TextLines lines = new TextLines(ok.value().in());
    return noted(ok.notes(), read(lines, LogHead.read(lines, name), name, input));
  }

  private static <T> Checked<T> noted(List<Problem> notes, Checked<T> read) {
    return Checked.ok(true, notes).then(nothing -> read);
  }

  /**
   * Reads a foreign log by a profile.
   *
   * @param path where it is
   * @param name how messages name it
   * @param input kind of input, as for a run file
   * @param profile what its lines mean; a line that does not fit is refused
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<Recording> readForeign(
      Path path, String name, SignalChain.Input input, ImportProfile profile) throws IOException {
    return readTimed(path, name, input, Optional.of(profile)).map(Timed::recording);
  }

  /**
   * A recording, and the clock by which a person may have noted what happened in it.
   *
   * @param recording what was recorded
   * @param clock what a clock on the wall showed when the time was 0, where the file tells it
   */
  record Timed(Recording recording, Optional<WallClock> clock) {}

  /** By a profile where there is one; else the lines must be those of a run file. */
  static Checked<Timed> readTimed(
      Path path, String name, SignalChain.Input input, Optional<ImportProfile> profile)
      throws IOException {
    if (profile.isEmpty()) {
      return read(path, name, input).map(r -> new Timed(r, r.start().map(WallClock::of)));
    }
    Optional<Problem> trouble = InputFile.trouble(path, name, LARGEST_BYTES);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    Checked<ForeignRows> opened =
        ForeignRows.open(
            Files.newInputStream(path), profile.get(), name, ForeignRows.Unreadable.BLANK);
    if (!(opened instanceof Checked.Ok<ForeignRows> ok)) {
      return Checked.refused(opened.problems());
    }
    try (ForeignRows rows = ok.value()) {
      Checked<LogColumns> head = rows.head();
      TextLines lines = new TextLines(rows, profile.get().lines().headerLines());
      Checked<Recording> read = rows.with(read(lines, head, name, input));
      return noted(ok.notes(), read.map(r -> new Timed(r, rows.clock())));
    }
  }

  private static Checked<Recording> read(
      TextLines lines, Checked<LogColumns> head, String name, SignalChain.Input input)
      throws IOException {
    Checked<RunFile> begun =
        head.then(
            columns ->
                columns.terminal(input, name).map(at -> new RunFile(lines, columns, name, at)));
    if (!(begun instanceof Checked.Ok<RunFile> run)) {
      return Checked.refused(begun.problems());
    }
    run.value().problems.addAll(run.notes());
    return run.value().rows();
  }

  /** Whether the first row holds words, such as units, instead of numbers. */
  private boolean isSecondHead() {
    cells.read(lines);
    List<String> texts = cells.texts().stream().filter(text -> !text.isEmpty()).toList();
    boolean words = texts.stream().noneMatch(text -> text.matches(".*\\d.*"));
    boolean head = cells.count() == columns.names().size() && texts.size() > 1 && words;
    if (head) {
      problems.error(
          "file.second-head", here(columns.names().get(0)), LogHead.excerpt(texts.get(0)));
    }
    return head;
  }

  private Checked<Recording> rows() throws IOException {
    int count = 0;
    while (lines.next()) {
      if (!lines.isBlank()) {
        count++;
        if (count == 1 && isSecondHead()) {
          break;
        }
        row();
      }
      if (count > LARGEST_ROWS) {
        problems.error("file.too-many-rows", Where.file(file), "", String.valueOf(LARGEST_ROWS));
        break;
      }
    }
    if (count == 0) {
      problems.error("file.no-rows", Where.file(file), "");
    } else if (signal.isEmpty() && !problems.hasErrors()) {
      problems.error("file.no-signal-at-all", here(columns.unit().column()), "");
    }
    return problems.hasErrors()
        ? Checked.refused(problems.list())
        : Checked.ok(recording(), problems.list());
  }

  private Recording recording() {
    return new Recording(
        columns.unit(),
        signal.toSeries(),
        series(air.get(AirCell.TEMPERATURE)),
        series(air.get(AirCell.PRESSURE)),
        series(air.get(AirCell.HUMIDITY)),
        series(supply),
        columns.start());
  }

  private static Optional<Series> series(@Nullable GrowingSeries values) {
    return values == null || values.isEmpty() ? Optional.empty() : Optional.of(values.toSeries());
  }

  private void row() {
    cells.read(lines);
    if (!isWhole()) {
      return;
    }
    // every cell is judged, also where the time cannot be used
    OptionalDouble time_s = time();
    OptionalDouble value = signal();
    Map<AirCell, OptionalDouble> state = new EnumMap<>(AirCell.class);
    for (AirCell kind : AirCell.values()) {
      state.put(kind, air(kind));
    }
    OptionalDouble supply_V = possible(LogColumns.SUPPLY, number(LogColumns.SUPPLY));
    if (time_s.isPresent()) {
      double t_s = time_s.getAsDouble();
      value.ifPresent(v -> signal.add(t_s, v));
      state.forEach(
          (kind, si) ->
              si.ifPresent(v -> air.computeIfAbsent(kind, k -> new GrowingSeries()).add(t_s, v)));
      supply_V.ifPresent(v -> supply.add(t_s, v));
    }
  }

  private OptionalDouble time() {
    OptionalDouble time_s = required(LogColumns.TIME);
    if (time_s.isEmpty()) {
      return time_s;
    }
    OptionalDouble before_s = last_s;
    last_s = time_s;
    if (before_s.isPresent() && time_s.getAsDouble() <= before_s.getAsDouble()) {
      String before = NumberCell.shown(before_s.getAsDouble());
      problems.error(
          "file.time-not-increasing", here(LogColumns.TIME), cell(LogColumns.TIME), before);
      return OptionalDouble.empty();
    }
    return time_s;
  }

  private boolean isWhole() {
    Where line = Where.file(file).atLine(lines.number());
    if (lines.isCut()) {
      problems.error("file.line-too-long", line, String.valueOf(TextLines.LONGEST));
      return false;
    }
    if (lines.contains('\0')) {
      problems.error("file.binary-row", line, "");
      return false;
    }
    if (!cells.isSound()) {
      problems.error("file.quotes", line, LogHead.excerpt(lines.text()));
      return false;
    }
    int expected = columns.names().size();
    if (cells.count() == expected) {
      return true;
    }
    if (cells.count() < expected && lines.isTorn()) {
      problems.warning("file.last-row-torn", line, LogHead.excerpt(lines.text()));
      return false;
    }
    boolean commas =
        cells.hasCommas()
            && cells.count() > expected
            && cells.texts().stream().allMatch(text -> text.matches("[-+]?\\d*"));
    problems.error(
        commas ? "file.cells-decimal-comma" : "file.cells-count",
        line,
        String.valueOf(cells.count()),
        String.valueOf(expected));
    return false;
  }

  private OptionalDouble signal() {
    String column = columns.unit().column();
    if (cells.isEmpty(columns.index(column))) {
      problems.warning("file.signal-empty", here(column), "");
      return OptionalDouble.empty();
    }
    OptionalDouble value = possible(column, required(column));
    if (terminal < 0 || value.isEmpty()) {
      return value;
    }
    OptionalDouble own_C = required(columns.names().get(terminal));
    return own_C.isPresent() ? OptionalDouble.of(value.getAsDouble() - own_C.getAsDouble()) : own_C;
  }

  /** The number, or nothing where no instrument can have measured it. */
  private OptionalDouble possible(String column, OptionalDouble value) {
    Possible possible = Possible.of(columns.unit());
    boolean supply = column.equals(LogColumns.SUPPLY);
    boolean allowed =
        value.isEmpty()
            || (supply
                ? possible.allowsSupply(value.getAsDouble())
                : possible.allowsSignal(value.getAsDouble()));
    if (!allowed) {
      double most = supply ? possible.most_V() : possible.mostSignal();
      problems.warning("file.impossible", here(column), cell(column), NumberCell.shown(most));
    }
    return allowed ? value : OptionalDouble.empty();
  }

  private OptionalDouble air(AirCell kind) {
    OptionalDouble value = number(kind.column());
    if (value.isPresent() && !kind.allows(value.getAsDouble())) {
      problems.warning(
          "file.air-out-of-range", here(kind.column()), cell(kind.column()), kind.allowed());
    }
    return kind.siOf(value);
  }

  // an optional column: nothing where it or its cell is missing
  private OptionalDouble number(String column) {
    int index = columns.index(column);
    return index < 0 || cells.isEmpty(index) ? OptionalDouble.empty() : required(column);
  }

  private OptionalDouble required(String column) {
    OptionalDouble value = cells.number(columns.index(column));
    if (value.isEmpty()) {
      String found = cell(column);
      problems.error(cells.complaint(found), here(column), LogHead.excerpt(found));
    }
    return value;
  }

  private String cell(String column) {
    return cells.text(columns.index(column));
  }

  private Where here(String column) {
    return Where.file(file).atLine(lines.number()).atColumn(column);
  }
}
