package faintwind.files.run;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.SignalUnit;
import faintwind.files.CsvLine;
import faintwind.files.NumberCell;
import faintwind.files.ProblemList;
import faintwind.files.TextLines;
import faintwind.message.Checked;
import faintwind.message.Where;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads and judges the lines before the first row: comments, start time, column names. */
public final class LogHead {
  static final String START = "# start:";

  /** Stands at the head of whatever the virtual instrument made. */
  static final String REHEARSAL = "# rehearsal:";

  private final TextLines lines;
  private final String file;
  private final ProblemList problems = new ProblemList();
  private Optional<OffsetDateTime> start = Optional.empty();

  private LogHead(TextLines lines, String file) {
    this.lines = lines;
    this.file = file;
  }

  /** Leaves {@code lines} on the header row. */
  static Checked<LogColumns> read(TextLines lines, String file) throws IOException {
    return new LogHead(lines, file).read();
  }

  private Checked<LogColumns> read() throws IOException {
    boolean any = lines.next();
    while (any && isBeforeHeader()) {
      any = lines.next();
    }
    if (!any) {
      problems.error(lines.number() == 0 ? "file.empty" : "file.no-rows", Where.file(file), "");
      return Checked.refused(problems.list());
    }
    if (!isReadableText()) {
      return Checked.refused(problems.list());
    }
    CsvLine line = new CsvLine();
    line.read(lines);
    List<String> names = line.texts();
    Optional<SignalUnit> unit = judge(line, names);
    return problems.hasErrors()
        ? Checked.refused(problems.list())
        : Checked.ok(new LogColumns(names, unit.orElseThrow(), start), problems.list());
  }

  private boolean isBeforeHeader() {
    if (lines.isBlank()) {
      return true;
    }
    if (lines.bytes()[lines.start()] != '#' || lines.contains('\0')) {
      return false;
    }
    String text = lines.text();
    if (text.startsWith(REHEARSAL)) {
      problems.warning(Calibration.REHEARSAL, Where.file(file), "");
    }
    if (text.startsWith(START)) {
      String found = text.substring(START.length()).strip();
      try {
        start = Optional.of(OffsetDateTime.parse(found));
      } catch (DateTimeParseException e) {
        problems.error("file.start-not-a-time", here(), found);
      }
    }
    return true;
  }

  private boolean isReadableText() {
    byte[] bytes = lines.bytes();
    int from = lines.start();
    boolean marked = lines.end() - from >= 2;
    int first = marked ? bytes[from] & 0xFF : 0;
    int second = marked ? bytes[from + 1] & 0xFF : 0;
    if ((first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF)) {
      problems.error("file.utf16", Where.file(file), "");
    } else if (lines.contains('\0')) {
      problems.error("file.binary", Where.file(file), "");
    } else if (lines.isCut()) {
      problems.error("file.line-too-long", here(), String.valueOf(TextLines.LONGEST));
    } else if (!lines.isUtf8()) {
      problems.error("file.not-utf8", here(), "");
    }
    return !problems.hasErrors();
  }

  private Optional<SignalUnit> judge(CsvLine line, List<String> names) {
    String all = String.join(", ", names);
    if (!line.isSound()) {
      problems.error("file.quotes", here(), excerpt(all));
    }
    if (names.size() == 1 && (all.contains(";") || all.contains("\t"))) {
      problems.error(all.contains(";") ? "file.semicolons" : "file.tabs", here(), excerpt(all));
      return Optional.empty();
    }
    if (names.stream().allMatch(name -> name.isEmpty() || NumberCell.parse(name).isPresent())) {
      problems.error("file.no-header", here(), excerpt(all));
      return Optional.empty();
    }
    judgeDoubles(names);
    if (!names.contains(LogColumns.TIME)) {
      problems.error("file.column-missing", here(), excerpt(all), LogColumns.TIME);
    }
    return signal(names, all);
  }

  private void judgeDoubles(List<String> names) {
    Set<String> seen = new LinkedHashSet<>();
    Set<String> doubled = new LinkedHashSet<>();
    for (String name : names) {
      if (!name.isEmpty() && !seen.add(name)) {
        doubled.add(name);
      }
    }
    doubled.forEach(name -> problems.error("file.column-doubled", here().atColumn(name), name));
  }

  private Optional<SignalUnit> signal(List<String> names, String all) {
    List<SignalUnit> units =
        Arrays.stream(SignalUnit.values()).filter(unit -> names.contains(unit.column())).toList();
    String allowed = String.join(", ", LogColumns.signalNames());
    if (units.isEmpty()) {
      problems.error("file.signal-missing", here(), excerpt(all), allowed);
    } else if (units.size() > 1) {
      String found = String.join(", ", units.stream().map(SignalUnit::column).toList());
      problems.error("file.signal-several", here(), found);
    }
    return units.stream().findFirst();
  }

  private Where here() {
    return Where.file(file).atLine(lines.number());
  }

  /** A text from a file for a message: one line, at most 120 characters of it. */
  public static String excerpt(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.length() <= 120 ? plain : plain.substring(0, 120).strip() + "…";
  }
}
