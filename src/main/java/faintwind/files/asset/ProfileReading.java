package faintwind.files.asset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.profile.ColumnRef;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineForm;
import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.ValueColumn;
import faintwind.calibration.profile.ValueUnit;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** Reads a profile that its schema has passed, and what a schema cannot say about it. */
final class ProfileReading {
  private final ObjectNode node;
  private final Where where;
  private final List<Problem> problems = new ArrayList<>();

  ProfileReading(ObjectNode node, Where where) {
    this.node = node;
    this.where = where;
  }

  Checked<ImportProfile> profile() {
    LineForm lines = lines();
    Optional<TimeColumn> time = time(node.get("time"));
    List<ValueColumn> columns = new ArrayList<>();
    JsonNode list = node.get("columns");
    for (int i = 0; i < list.size(); i++) {
      column(list.get(i), "columns." + i).ifPresent(columns::add);
    }
    together(columns, list.size());
    if (problems.isEmpty() && time.isPresent()) {
      ImportProfile profile =
          new ImportProfile(text(node, "id"), text(node, "name"), lines, time.get(), columns);
      if (profile.needsNames() && lines.headerLines() == 0) {
        error("profile.names-without-header", "header_lines", "0");
      } else {
        return Checked.ok(profile);
      }
    }
    return Checked.refused(problems);
  }

  private LineForm lines() {
    String word = text(node, "delimiter");
    char delimiter =
        switch (word) {
          case "tab" -> '\t';
          case "space" -> ' ';
          default -> word.charAt(0);
        };
    char mark = text(node, "decimal_mark").charAt(0);
    if (delimiter == mark) {
      error("profile.mark-is-delimiter", "decimal_mark", word);
    }
    List<String> missing = new ArrayList<>();
    node.path("missing").forEach(m -> missing.add(m.asText()));
    return new LineForm(
        delimiter, mark, node.get("header_lines").asInt(), text(node, "comment"), missing);
  }

  private Optional<TimeColumn> time(JsonNode time) {
    TimeForm form = word(TimeForm.values(), TimeForm::word, text(time, "as"));
    Optional<ColumnRef> column = ref(time, "column");
    Optional<ColumnRef> date = ref(time, "date_column");
    String pattern = text(time, "pattern");
    OptionalDouble wraps = number(time, "wraps_at");
    int before = problems.size();
    if (form == TimeForm.RECEIVED && column.isPresent()) {
      error("profile.time-column-idle", "time.column", column.get().text());
    } else if (form != TimeForm.RECEIVED && column.isEmpty()) {
      error("profile.time-column-missing", "time.column", form.word());
    }
    if (form == TimeForm.PATTERN && pattern.isEmpty()) {
      error("profile.pattern-missing", "time.pattern", "");
    } else if (form != TimeForm.PATTERN && !pattern.isEmpty()) {
      error("profile.pattern-idle", "time.pattern", pattern, form.word());
    } else if (form == TimeForm.PATTERN && !isPattern(pattern)) {
      error("profile.pattern-unknown", "time.pattern", pattern);
    }
    if (wraps.isPresent() && !form.isNumber()) {
      error("profile.wraps-idle", "time.wraps_at", form.word());
    }
    if (date.isPresent() && form != TimeForm.PATTERN && form != TimeForm.ISO) {
      error("profile.date-idle", "time.date_column", form.word());
    }
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(new TimeColumn(form, column, date, pattern, wraps));
  }

  private static boolean isPattern(String pattern) {
    String letters = pattern.replaceAll("'[^']*'", "");
    return letters.matches(".*[Hhk].*") && TimeColumn.isPattern(pattern);
  }

  private Optional<ValueColumn> column(JsonNode column, String place) {
    Meaning meaning = word(Meaning.values(), Meaning::word, text(column, "means"));
    ValueUnit unit = word(ValueUnit.values(), ValueUnit::word, text(column, "unit"));
    if (!meaning.allows(unit)) {
      error("profile.unit-does-not-fit", place + ".unit", unit.word(), meaning.word());
      return Optional.empty();
    }
    return Optional.of(
        new ValueColumn(
            ref(column, "column").orElseThrow(),
            meaning,
            unit,
            number(column, "scale").orElse(1),
            number(column, "shift").orElse(0),
            number(column, "wraps_at"),
            new ValueColumn.Around(text(column, "before"), text(column, "after"))));
  }

  private void together(List<ValueColumn> columns, int listed) {
    Set<Meaning> seen = EnumSet.noneOf(Meaning.class);
    for (ValueColumn column : columns) {
      if (!seen.add(column.meaning())) {
        error("profile.meaning-twice", "columns", column.meaning().word());
      }
    }
    boolean signal = seen.contains(Meaning.SIGNAL);
    boolean heated = seen.contains(Meaning.HEATED);
    boolean reference = seen.contains(Meaning.REFERENCE);
    if (signal && (heated || reference)) {
      error("profile.signal-and-balls", "columns", "");
    } else if (!signal && !(heated && reference) && columns.size() == listed) {
      error("profile.signal-missing", "columns", "");
    }
  }

  private static Optional<ColumnRef> ref(JsonNode node, String key) {
    JsonNode value = node.get(key);
    if (value == null) {
      return Optional.empty();
    }
    return Optional.of(
        value.isTextual()
            ? ColumnRef.named(value.asText().strip())
            : ColumnRef.numbered(value.asInt()));
  }

  private static String text(JsonNode node, String key) {
    return node.path(key).asText("");
  }

  private static OptionalDouble number(JsonNode node, String key) {
    return node.has(key) ? OptionalDouble.of(node.get(key).asDouble()) : OptionalDouble.empty();
  }

  // the schema has passed the word
  private static <T> T word(T[] all, Function<T, String> word, String found) {
    for (T one : all) {
      if (word.apply(one).equals(found)) {
        return one;
      }
    }
    throw new IllegalArgumentException("word = " + found + ", not in the schema");
  }

  private void error(String id, String column, String found, String... details) {
    problems.add(Problem.error(id, where.atColumn(column), found, details));
  }
}
