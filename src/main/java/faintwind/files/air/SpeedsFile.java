package faintwind.files.air;

import faintwind.calibration.Calibration;
import faintwind.calibration.field.SpeedSeries;
import faintwind.calibration.speed.SpeedFlag;
import faintwind.calibration.speed.SpeedRow;
import faintwind.files.CsvLine;
import faintwind.files.InputFile;
import faintwind.files.TextLines;
import faintwind.files.run.LogHead;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A converted log read back: {@code time_s}, {@code speed_m_s}, {@code u95_m_s} and {@code flag};
 * other columns are passed over. Rows or whole minutes.
 *
 * @param rows its rows
 * @param start when its time 0 was
 */
public record SpeedsFile(SpeedSeries rows, Optional<OffsetDateTime> start) {
  private static final long LARGEST_BYTES = 2048L << 20;
  private static final int MOST_ROWS = 3_000_000;
  private static final String START = "# start:";
  private static final String REHEARSAL = "# rehearsal:";
  private static final List<String> NEEDED = List.of("time_s", "speed_m_s", "u95_m_s", "flag");

  /**
   * Reads it.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<SpeedsFile> read(Path path) throws IOException {
    String name = path.toString();
    Optional<Problem> trouble = InputFile.trouble(path, name, LARGEST_BYTES);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
      return new Reader(new TextLines(in), Where.file(name)).read();
    }
  }

  /** One reading. */
  private static final class Reader {
    private final TextLines lines;
    private final Where where;
    private final CsvLine cells = new CsvLine();
    private final List<Problem> notes = new ArrayList<>();
    private Optional<OffsetDateTime> start = Optional.empty();

    Reader(TextLines lines, Where where) {
      this.lines = lines;
      this.where = where;
    }

    Checked<SpeedsFile> read() throws IOException {
      boolean any = lines.next();
      while (any && isBeforeHeader()) {
        any = lines.next();
      }
      if (notes.stream().anyMatch(Problem::isError)) {
        return Checked.refused(notes);
      }
      if (!any) {
        return Checked.refused(Problem.error("file.empty", where, ""));
      }
      cells.read(lines);
      List<String> names = cells.texts();
      if (!names.containsAll(NEEDED)) {
        String found = LogHead.excerpt(String.join(", ", names));
        return Checked.refused(Problem.error("air.not-converted", where, found));
      }
      return rows(names);
    }

    private boolean isBeforeHeader() {
      String text = lines.text();
      if (text.startsWith(REHEARSAL)) {
        notes.add(Problem.warning(Calibration.REHEARSAL, where, ""));
      }
      if (text.startsWith(START)) {
        String found = text.substring(START.length()).strip();
        try {
          start = Optional.of(OffsetDateTime.parse(found));
        } catch (DateTimeParseException e) {
          notes.add(Problem.error("file.start-not-a-time", where.atLine(lines.number()), found));
        }
      }
      return lines.isBlank() || text.startsWith("#");
    }

    private Checked<SpeedsFile> rows(List<String> names) throws IOException {
      int time = names.indexOf("time_s");
      int speed = names.indexOf("speed_m_s");
      int u95 = names.indexOf("u95_m_s");
      int flag = names.indexOf("flag");
      SpeedSeries.Builder rows = new SpeedSeries.Builder();
      while (lines.next()) {
        if (lines.isBlank()) {
          continue;
        }
        cells.read(lines);
        OptionalDouble at_s = cells.number(time);
        if (at_s.isPresent()) {
          SpeedRow row = row(cells.number(speed), cells.number(u95), cells.text(flag));
          rows.add(at_s.getAsDouble(), row);
        }
        if (rows.size() > MOST_ROWS) {
          String most = String.valueOf(MOST_ROWS);
          return Checked.refused(Problem.error("air.too-many-rows", where, most));
        }
      }
      return rows.size() == 0
          ? Checked.refused(Problem.error("file.no-rows", where, ""))
          : Checked.ok(new SpeedsFile(rows.build(), start), notes);
    }

    private static SpeedRow row(OptionalDouble speed, OptionalDouble u95, String flags) {
      if (speed.isEmpty() || u95.isEmpty()) {
        return SpeedRow.BAD;
      }
      EnumSet<SpeedFlag> set = EnumSet.noneOf(SpeedFlag.class);
      for (SpeedFlag flag : SpeedFlag.values()) {
        if (List.of(flags.split("\\+")).contains(flag.word())) {
          set.add(flag);
        }
      }
      return new SpeedRow(speed, u95, set);
    }
  }
}
