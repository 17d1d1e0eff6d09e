package faintwind.calibration.profile;

import faintwind.calibration.live.LiveSample;
import faintwind.calibration.speed.LogAir;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * Reads the lines of one log, one after the other, by a profile. What does not fit is told with the
 * field of the profile that it does not fit; nothing is guessed. For one log and one thread.
 */
public final class LineReader {
  private static final String RIVALS = ";,\t ";

  private final ImportProfile profile;
  private final Begin begin;
  private final String source;
  private final LineTime time;
  private final Map<ValueColumn, Unwrap> turns;
  private List<String> names = List.of();
  private int number;
  private int unread;
  private boolean anyRow;

  /** How the lines begin. */
  public enum Begin {
    /** With the header lines of the profile. */
    FILE,
    /** Anywhere: the logger may have begun long ago, and the first line may be torn. */
    STREAM
  }

  /**
   * A reader before its first line.
   *
   * @param profile what the lines mean
   * @param begin how they begin
   * @param source how messages name them
   */
  public LineReader(ImportProfile profile, Begin begin, String source) {
    this.profile = profile;
    this.begin = begin;
    this.source = source;
    this.time = new LineTime(profile.time(), profile.lines().decimalMark());
    this.turns = new HashMap<>();
    profile.columns().forEach(c -> c.wrapsAt().ifPresent(turn -> turns.put(c, new Unwrap(turn))));
  }

  public ImportProfile profile() {
    return profile;
  }

  /** When the time was 0, where the lines tell it. */
  public Optional<OffsetDateTime> start() {
    return time.start();
  }

  /** Number of lines read so far. */
  public int lines() {
    return number;
  }

  /** The next line, without its end. */
  public LineOutcome read(String line) {
    number++;
    String comment = profile.lines().comment();
    boolean head = begin == Begin.FILE && number <= profile.lines().headerLines();
    if (!head && (line.isBlank() || (!comment.isEmpty() && line.startsWith(comment)))) {
      return new LineOutcome.Skipped();
    }
    if (line.indexOf('\0') >= 0 && !head) {
      return unreadable(List.of(problem("import.binary", "delimiter", "")));
    }
    List<String> cells = LineCells.split(unmarked(line), profile.lines().delimiter());
    return head ? header(cells) : row(line, cells);
  }

  // a byte-order mark
  private String unmarked(String line) {
    return number == 1 && line.startsWith("\ufeff") ? line.substring(1) : line;
  }

  private LineOutcome header(List<String> cells) {
    boolean last = number == profile.lines().headerLines();
    if (!last || !profile.needsNames()) {
      return new LineOutcome.Skipped();
    }
    names = cells;
    List<Problem> missing = missingNames(cells);
    return missing.isEmpty() ? new LineOutcome.Skipped() : new LineOutcome.Unreadable(missing);
  }

  private LineOutcome row(String line, List<String> cells) {
    if (profile.needsNames()) {
      List<Problem> missing = missingNames(cells);
      if (missing.isEmpty()) {
        // the header, at the beginning or again after a restart
        names = cells;
        return new LineOutcome.Skipped();
      }
      if (names.isEmpty()) {
        return unreadable(missing);
      }
    }
    Row row = new Row(line, cells);
    LineOutcome outcome = row.outcome();
    if (outcome instanceof LineOutcome.Unreadable bad) {
      return unreadable(bad.problems());
    }
    anyRow = true;
    return outcome;
  }

  /** Before the first reading of a stream come its header and perhaps the end of a torn line. */
  private LineOutcome unreadable(List<Problem> problems) {
    unread++;
    boolean passed =
        begin == Begin.STREAM && !anyRow && unread <= profile.lines().headerLines() + 1;
    return passed ? new LineOutcome.Skipped() : new LineOutcome.Unreadable(problems);
  }

  private List<Problem> missingNames(List<String> cells) {
    TreeSet<String> wanted = new TreeSet<>();
    profile.time().column().filter(ColumnRef::isNamed).ifPresent(c -> wanted.add(c.name()));
    profile.time().date().filter(ColumnRef::isNamed).ifPresent(c -> wanted.add(c.name()));
    profile.columns().stream()
        .map(ValueColumn::column)
        .filter(ColumnRef::isNamed)
        .forEach(c -> wanted.add(c.name()));
    wanted.removeAll(cells);
    String found = shown(String.join(" | ", cells));
    return wanted.stream().map(name -> problem("import.name", name, found, name)).toList();
  }

  private Problem problem(String id, String field, String found, String... details) {
    Where where = Where.file(source).atLine(number).atColumn(field);
    return Problem.error(id, where, found, details);
  }

  private static String shown(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.length() <= 80 ? plain : plain.substring(0, 80).strip() + "…";
  }

  /** One line that should be a reading. */
  private final class Row {
    private final String line;
    private final List<String> cells;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> notes = new ArrayList<>();
    private final Map<Meaning, Double> values = new EnumMap<>(Meaning.class);

    Row(String line, List<String> cells) {
      this.line = line;
      this.cells = cells;
    }

    LineOutcome outcome() {
      if (wrongDelimiter()) {
        return new LineOutcome.Unreadable(problems);
      }
      OptionalDouble time_s = time();
      profile.columns().forEach(this::take);
      if (!problems.isEmpty()) {
        return new LineOutcome.Unreadable(problems);
      }
      LogAir air = new LogAir(value(Meaning.AIR), value(Meaning.PRESSURE), value(Meaning.HUMIDITY));
      LiveSample sample =
          new LiveSample(time_s, signal(), air, value(Meaning.SUPPLY), value(Meaning.TERMINAL));
      return new LineOutcome.Row(sample, notes);
    }

    private boolean wrongDelimiter() {
      boolean one = cells.size() == 1 && lastNeeded() > 1;
      if (one) {
        for (char rival : RIVALS.toCharArray()) {
          if (LineCells.split(line, rival).size() >= lastNeeded()) {
            String asked = word(profile.lines().delimiter());
            problems.add(problem("import.delimiter", "delimiter", shown(line), asked, word(rival)));
            return true;
          }
        }
      }
      return false;
    }

    private int lastNeeded() {
      int last = profile.time().column().map(c -> c.index(names).orElse(0) + 1).orElse(0);
      for (ValueColumn column : profile.columns()) {
        last = Math.max(last, column.column().index(names).orElse(0) + 1);
      }
      return last;
    }

    private OptionalDouble time() {
      if (profile.time().form() == TimeForm.RECEIVED) {
        return OptionalDouble.empty();
      }
      List<String> parts = new ArrayList<>();
      profile.time().date().flatMap(ref -> cell(ref, "time.date_column")).ifPresent(parts::add);
      profile.time().column().flatMap(ref -> cell(ref, "time.column")).ifPresent(parts::add);
      int wanted = profile.time().date().isPresent() ? 2 : 1;
      if (parts.size() < wanted) {
        return OptionalDouble.empty();
      }
      String text = String.join(" ", parts);
      OptionalDouble read = time.read(text);
      if (read.isEmpty()) {
        problems.add(timeProblem(text));
      }
      return read;
    }

    private Problem timeProblem(String text) {
      TimeForm form = profile.time().form();
      char mark = profile.lines().decimalMark();
      if (form.isNumber() && LineNumber.parse(text, LineNumber.other(mark)).isPresent()) {
        return markProblem(text);
      }
      return form == TimeForm.PATTERN
          ? problem("import.time-pattern", "time.pattern", shown(text), profile.time().pattern())
          : problem("import.time", "time.as", shown(text), form.word());
    }

    private Problem markProblem(String text) {
      char mark = profile.lines().decimalMark();
      return problem("import.decimal-mark", "decimal_mark", shown(text), String.valueOf(mark));
    }

    private void take(ValueColumn column) {
      String field = "columns, " + column.meaning().word();
      Optional<String> there = cell(column.column(), field);
      if (there.isEmpty()) {
        return;
      }
      String text = column.around().strip(there.get());
      if (profile.lines().isMissing(there.get()) || profile.lines().isMissing(text)) {
        return;
      }
      char mark = profile.lines().decimalMark();
      OptionalDouble read = LineNumber.parse(text, mark);
      if (read.isEmpty()) {
        boolean other = LineNumber.parse(text, LineNumber.other(mark)).isPresent();
        problems.add(other ? markProblem(text) : problem("import.number", field, shown(text)));
        return;
      }
      keep(column, field, read.getAsDouble());
    }

    private void keep(ValueColumn column, String field, double number) {
      Unwrap wrap = turns.get(column);
      double counted = wrap == null ? number : wrap.next(number);
      double value = counted * column.scale() + column.shift();
      if (column.meaning() == Meaning.SIGNAL) {
        values.put(Meaning.SIGNAL, value);
        return;
      }
      double si = column.unit().toSi(value);
      if (column.meaning().isPossible(si)) {
        values.put(column.meaning(), si);
      } else {
        Where where = Where.file(source).atLine(LineReader.this.number).atColumn(field);
        notes.add(
            Problem.warning(
                "import.impossible", where, String.valueOf(number), column.unit().word()));
      }
    }

    private Optional<String> cell(ColumnRef ref, String field) {
      OptionalInt index = ref.index(names);
      if (index.isPresent() && index.getAsInt() < cells.size()) {
        return Optional.of(cells.get(index.getAsInt()));
      }
      problems.add(
          problem("import.cells", field, String.valueOf(cells.size()), ref.text(), shown(line)));
      return Optional.empty();
    }

    private OptionalDouble signal() {
      if (values.containsKey(Meaning.HEATED) || values.containsKey(Meaning.REFERENCE)) {
        OptionalDouble heated = value(Meaning.HEATED);
        OptionalDouble reference = value(Meaning.REFERENCE);
        return heated.isPresent() && reference.isPresent()
            ? OptionalDouble.of(heated.getAsDouble() - reference.getAsDouble())
            : OptionalDouble.empty();
      }
      return value(Meaning.SIGNAL);
    }

    private OptionalDouble value(Meaning meaning) {
      Double value = values.get(meaning);
      return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
  }

  /** A delimiter as a profile writes it. */
  public static String word(char delimiter) {
    return switch (delimiter) {
      case '\t' -> "tab";
      case ' ' -> "space";
      default -> String.valueOf(delimiter);
    };
  }
}
