package faintwind.files.run;

import faintwind.calibration.Calibration;
import faintwind.calibration.run.SignalUnit;
import faintwind.files.CsvLine;
import faintwind.files.HeadName;
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

/**
 * Reads and judges the lines before the first row: comments, start time, column names and which
 * character stands between them. {@link CsvLine} cuts the lines.
 */
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
    char delimiter = delimiter();
    CsvLine line = new CsvLine(delimiter);
    line.read(lines);
    Set<String> known = LogColumns.known();
    List<String> names = line.texts().stream().map(n -> plainName(n, known)).toList();
    Optional<SignalUnit> unit = judge(line, names);
    return problems.hasErrors()
        ? Checked.refused(problems.list())
        : Checked.ok(new LogColumns(names, unit.orElseThrow(), start, delimiter), problems.list());
  }

  /** A head with its unit in brackets counts where it is in the very unit of our name. */
  private static String plainName(String head, Set<String> known) {
    HeadName name = HeadName.of(head, known);
    return name.factor() == 1 ? name.name() : head;
  }

  /** That of comma, semicolon and tab which parts the line into the most names that are known. */
  private char delimiter() {
    char best = ',';
    long most = 0;
    for (char delimiter : new char[] {',', ';', '\t'}) {
      CsvLine line = new CsvLine(delimiter);
      line.read(lines);
      Set<String> known = LogColumns.known();
      long found =
          line.texts().stream().filter(n -> known.contains(HeadName.of(n, known).name())).count();
      best = found > most ? delimiter : best;
      most = Math.max(most, found);
    }
    return best;
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
    if (lines.contains('\0')) {
      problems.error("file.binary", Where.file(file), "");
    } else if (lines.isCut()) {
      problems.error("file.line-too-long", here(), String.valueOf(TextLines.LONGEST));
    }
    return !problems.hasErrors();
  }

  private Optional<SignalUnit> judge(CsvLine line, List<String> names) {
    String all = String.join(", ", names);
    if (!line.isSound()) {
      problems.error("file.quotes", here(), excerpt(all));
    }
    if (names.stream().allMatch(name -> name.isEmpty() || NumberCell.parse(name).isPresent())) {
      problems.error("file.no-header", here(), excerpt(all));
      return Optional.empty();
    }
    judgeDoubles(names);
    boolean anySignal = LogColumns.signalNames().stream().anyMatch(names::contains);
    if (!names.contains(LogColumns.TIME) && !anySignal) {
      problems.error("file.foreign", here(), excerpt(all), file);
      return Optional.empty();
    }
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
