package faintwind.calibration.profile;

import faintwind.calibration.live.LiveSample;
import faintwind.calibration.run.Possible;
import faintwind.calibration.speed.LogAir;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads one line that should be a reading. For one use. */
final class RowReading {
  private static final List<Character> RIVALS = List.of(';', ',', '\t', ' ');

  private final ReadSoFar soFar;
  private final ImportProfile profile;
  private final String line;
  private final List<String> cells;
  private final Possible possible;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Problem> notes = new ArrayList<>();
  private final Map<Meaning, Double> values = new EnumMap<>(Meaning.class);

  RowReading(ReadSoFar soFar, String line, List<String> cells) {
    this.soFar = soFar;
    this.profile = soFar.profile();
    this.line = line;
    this.cells = cells;
    this.possible = Possible.of(profile.unit());
  }

  LineOutcome outcome() {
    if (wrongDelimiter()) {
      return new LineOutcome.Unreadable(problems);
    }
    if (cells.size() >= lastNeeded() && !hasItsCells()) {
      return new LineOutcome.Unreadable(problems);
    }
    OptionalDouble time_s = time();
    profile.columns().forEach(this::take);
    if (!problems.isEmpty()) {
      return new LineOutcome.Unreadable(problems);
    }
    LogAir air = new LogAir(value(Meaning.AIR), value(Meaning.PRESSURE), value(Meaning.HUMIDITY));
    LiveSample sample =
        new LiveSample(
            soFar.apart(time_s), signal(), air, value(Meaning.SUPPLY), value(Meaning.TERMINAL));
    return new LineOutcome.Row(sample, notes, cells);
  }

  private boolean wrongDelimiter() {
    boolean one = cells.size() == 1 && lastNeeded() > 1;
    if (one) {
      for (char rival : RIVALS) {
        if (LineCells.split(line, rival).size() >= lastNeeded()) {
          String asked = LineForm.word(profile.lines().delimiter());
          problems.add(
              soFar.problem(
                  "import.delimiter",
                  "delimiter",
                  ReadSoFar.excerpt(line),
                  asked,
                  LineForm.word(rival)));
          return true;
        }
      }
    }
    return false;
  }

  private boolean hasItsCells() {
    int count = cells.size();
    boolean fits = soFar.width().fits(count, cells.get(count - 1).isEmpty());
    if (!fits) {
      String expected = String.valueOf(soFar.width().expected());
      String found = String.valueOf(count);
      problems.add(
          soFar.problem(
              "import.cells-count", "delimiter", found, expected, ReadSoFar.excerpt(line)));
    }
    return fits;
  }

  private int lastNeeded() {
    int last = profile.time().column().map(c -> c.index(soFar.names()).orElse(0) + 1).orElse(0);
    for (ValueColumn column : profile.columns()) {
      last = Math.max(last, column.column().index(soFar.names()).orElse(0) + 1);
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
    OptionalDouble read = soFar.time_s(text);
    Optional<String> note = soFar.timeNote();
    if (read.isEmpty()) {
      problems.add(
          note.map(id -> soFar.problem(id, "time.zone", ReadSoFar.excerpt(text)))
              .orElseGet(() -> timeProblem(text)));
    } else {
      note.ifPresent(
          id -> notes.add(Problem.warning(id, soFar.where("time.zone"), ReadSoFar.excerpt(text))));
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
        ? soFar.problem(
            "import.time-pattern",
            "time.pattern",
            ReadSoFar.excerpt(text),
            profile.time().pattern())
        : soFar.problem("import.time", "time.as", ReadSoFar.excerpt(text), form.word());
  }

  private Problem markProblem(String text) {
    char mark = profile.lines().decimalMark();
    return soFar.problem(
        "import.decimal-mark", "decimal_mark", ReadSoFar.excerpt(text), String.valueOf(mark));
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
      problems.add(
          other
              ? markProblem(text)
              : soFar.problem("import.number", field, ReadSoFar.excerpt(text)));
      return;
    }
    keep(column, field, read.getAsDouble());
  }

  private void keep(ValueColumn column, String field, double number) {
    double value = soFar.counted(column, number) * column.scale() + column.shift();
    boolean signal = column.meaning() == Meaning.SIGNAL;
    double si = signal ? value : column.unit().toSi(value);
    if (signal ? possible.allowsSignal(value) : column.meaning().isPossible(si)) {
      values.put(column.meaning(), si);
    } else {
      Where where = soFar.where(field);
      notes.add(
          Problem.warning(
              "import.impossible", where, String.valueOf(number), column.unit().word()));
    }
  }

  private Optional<String> cell(ColumnRef ref, String field) {
    OptionalInt index = ref.index(soFar.names());
    if (index.isPresent() && index.getAsInt() < cells.size()) {
      return Optional.of(cells.get(index.getAsInt()));
    }
    problems.add(
        soFar.problem(
            "import.cells",
            field,
            String.valueOf(cells.size()),
            ref.text(),
            ReadSoFar.excerpt(line)));
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
