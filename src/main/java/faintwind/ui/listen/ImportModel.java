package faintwind.ui.listen;

import faintwind.calibration.profile.ColumnRef;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineForm;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.Understood;
import faintwind.calibration.profile.ValueColumn;
import faintwind.calibration.profile.ValueUnit;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * A profile while a person puts it together, and what it makes of the log's first lines: worked out
 * anew at each change. What the window does not show (scale, wrap, words around a number) is kept
 * from the profile it began with.
 */
public final class ImportModel {
  private static final int SHOWN_PROBLEMS = 4;

  private final Messages words;
  private final String source;
  private final List<String> lines;
  private final LineReader.Begin begin;
  private final ObjectProperty<Character> delimiter = new SimpleObjectProperty<>(',');
  private final ObjectProperty<Character> decimalMark = new SimpleObjectProperty<>('.');
  private final StringProperty headerLines = new SimpleStringProperty("1");
  private final ObjectProperty<TimeForm> timeForm = new SimpleObjectProperty<>(TimeForm.SECONDS);
  private final StringProperty timeColumn = new SimpleStringProperty("1");
  private final StringProperty dateColumn = new SimpleStringProperty("");
  private final StringProperty pattern = new SimpleStringProperty("");
  private final StringProperty missing = new SimpleStringProperty("");
  private final StringProperty name = new SimpleStringProperty("");
  private final ObservableList<Row> rows = FXCollections.observableArrayList();
  private final ObservableList<Row> shownRows = FXCollections.unmodifiableObservableList(rows);
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.NOTHING);
  private Optional<ImportProfile> base = Optional.empty();
  private boolean filling;

  /** One column that is used. */
  public static final class Row {
    private final StringProperty column = new SimpleStringProperty("");
    private final ObjectProperty<Meaning> meaning = new SimpleObjectProperty<>(Meaning.SIGNAL);
    private final ObjectProperty<ValueUnit> unit = new SimpleObjectProperty<>(ValueUnit.MILLIVOLT);
    private final Optional<ValueColumn> base;

    private Row(Optional<ValueColumn> base) {
      this.base = base;
    }

    public StringProperty column() {
      return column;
    }

    public ObjectProperty<Meaning> meaning() {
      return meaning;
    }

    public ObjectProperty<ValueUnit> unit() {
      return unit;
    }
  }

  /**
   * What stands under the choices.
   *
   * @param profile the profile, where it is one
   * @param understood what it makes of the lines
   * @param problems what is wrong with it, and what did not fit, in words
   */
  public record View(
      Optional<ImportProfile> profile, Optional<Understood> understood, List<String> problems) {
    static final View NOTHING = new View(Optional.empty(), Optional.empty(), List.of());

    public View {
      problems = List.copyOf(problems);
    }

    /** Whether every line was understood. */
    public boolean fits() {
      return profile.isPresent() && problems.isEmpty();
    }
  }

  /**
   * A profile that is not begun.
   *
   * @param source how the log is named
   * @param lines its first lines
   * @param begin whether they are those of a file
   */
  public ImportModel(Messages words, String source, List<String> lines, LineReader.Begin begin) {
    this.words = words;
    this.source = source;
    this.lines = List.copyOf(lines);
    this.begin = begin;
    addRow(Optional.empty());
    List<ObservableValue<?>> choices =
        List.of(
            delimiter,
            decimalMark,
            headerLines,
            timeForm,
            timeColumn,
            dateColumn,
            pattern,
            missing,
            name);
    choices.forEach(property -> property.addListener((p, was, now) -> understand()));
    rows.get(0).column().set("2");
    understand();
  }

  /** The first lines as they stand. */
  public List<String> lines() {
    return lines;
  }

  public ObjectProperty<Character> delimiter() {
    return delimiter;
  }

  public ObjectProperty<Character> decimalMark() {
    return decimalMark;
  }

  public StringProperty headerLines() {
    return headerLines;
  }

  public ObjectProperty<TimeForm> timeForm() {
    return timeForm;
  }

  public StringProperty timeColumn() {
    return timeColumn;
  }

  public StringProperty dateColumn() {
    return dateColumn;
  }

  public StringProperty pattern() {
    return pattern;
  }

  /** Words for a value that was not there, with blanks between. */
  public StringProperty missing() {
    return missing;
  }

  public StringProperty name() {
    return name;
  }

  public ObservableList<Row> rows() {
    return shownRows;
  }

  public ReadOnlyObjectProperty<View> view() {
    return view.getReadOnlyProperty();
  }

  /** One more column. */
  public void addRow() {
    addRow(Optional.empty());
    understand();
  }

  /** One column fewer. */
  public void removeRow(Row row) {
    rows.remove(row);
    understand();
  }

  private Row addRow(Optional<ValueColumn> from) {
    Row row = new Row(from);
    from.ifPresent(
        column -> {
          row.column().set(column.column().text());
          row.meaning().set(column.meaning());
          row.unit().set(column.unit());
        });
    row.column().addListener((p, was, now) -> understand());
    row.meaning()
        .addListener(
            (p, was, now) -> {
              if (!now.allows(row.unit().get())) {
                row.unit().set(units(now).get(0));
              }
              understand();
            });
    row.unit().addListener((p, was, now) -> understand());
    rows.add(row);
    return row;
  }

  /** Units that go with a meaning. */
  public static List<ValueUnit> units(Meaning meaning) {
    return Arrays.stream(ValueUnit.values()).filter(meaning::allows).toList();
  }

  /** Begins from a profile that is there. */
  public void beginFrom(ImportProfile profile) {
    filling = true;
    base = Optional.of(profile);
    delimiter.set(profile.lines().delimiter());
    decimalMark.set(profile.lines().decimalMark());
    headerLines.set(String.valueOf(profile.lines().headerLines()));
    timeForm.set(profile.time().form());
    timeColumn.set(profile.time().column().map(ColumnRef::text).orElse(""));
    dateColumn.set(profile.time().date().map(ColumnRef::text).orElse(""));
    pattern.set(profile.time().pattern());
    missing.set(String.join(" ", profile.lines().missing()));
    name.set(profile.name());
    rows.clear();
    profile.columns().forEach(column -> addRow(Optional.of(column)));
    filling = false;
    understand();
  }

  private void understand() {
    if (filling) {
      return;
    }
    List<String> problems = new ArrayList<>();
    Optional<ImportProfile> profile = profile(problems);
    if (profile.isEmpty()) {
      view.set(new View(Optional.empty(), Optional.empty(), problems));
      return;
    }
    Understood understood = Understood.of(lines, profile.get(), begin, source);
    understood.problems().stream().limit(SHOWN_PROBLEMS).map(this::line).forEach(problems::add);
    if (understood.problems().size() > SHOWN_PROBLEMS) {
      int more = understood.problems().size() - SHOWN_PROBLEMS;
      problems.add(words.text("import.more", more));
    }
    view.set(new View(profile, Optional.of(understood), problems));
  }

  private String line(Problem problem) {
    return words.line(problem);
  }

  private Optional<ImportProfile> profile(List<String> problems) {
    Optional<Integer> header = whole(headerLines.get());
    if (header.isEmpty()) {
      problems.add(words.text("import.header-no-number", headerLines.get()));
    }
    Optional<TimeColumn> time = time(problems);
    List<ValueColumn> columns = new ArrayList<>();
    for (Row row : rows) {
      Optional<ColumnRef> ref = ref(row.column().get());
      if (ref.isEmpty()) {
        problems.add(words.text("import.column-empty", row.meaning().get().word()));
      } else {
        columns.add(column(row, ref.get()));
      }
    }
    if (!problems.isEmpty() || time.isEmpty()) {
      return Optional.empty();
    }
    LineForm form =
        new LineForm(
            delimiter.get(),
            decimalMark.get(),
            header.orElseThrow(),
            namesLine(header.orElseThrow()),
            base.map(b -> b.lines().comment()).orElse(""),
            Arrays.stream(missing.get().split("\\s+", -1)).filter(w -> !w.isEmpty()).toList());
    return Optional.of(new ImportProfile(id(), shownName(), form, time.get(), columns));
  }

  private Optional<TimeColumn> time(List<String> problems) {
    TimeForm form = timeForm.get();
    Optional<ColumnRef> column =
        form == TimeForm.RECEIVED ? Optional.empty() : ref(timeColumn.get());
    String letters = form == TimeForm.PATTERN ? pattern.get().strip() : "";
    if (form != TimeForm.RECEIVED && column.isEmpty()) {
      problems.add(words.text("import.column-empty", words.text("import.time-word")));
      return Optional.empty();
    }
    if (form == TimeForm.PATTERN && (letters.isEmpty() || !TimeColumn.isPattern(letters))) {
      problems.add(words.text("profile.pattern-unknown", letters));
      return Optional.empty();
    }
    Optional<ColumnRef> date = form.isDated() ? ref(dateColumn.get()) : Optional.empty();
    OptionalDouble wraps =
        form.isNumber() && base.isPresent() ? base.get().time().wrapsAt() : OptionalDouble.empty();
    return Optional.of(new TimeColumn(form, column, date, letters, wraps, zone(form)));
  }

  private Optional<ZoneId> zone(TimeForm form) {
    return form.isDated() ? base.flatMap(b -> b.time().zone()) : Optional.empty();
  }

  private OptionalInt namesLine(int header) {
    OptionalInt line = base.map(b -> b.lines().namesLine()).orElse(OptionalInt.empty());
    return line.isPresent() && line.getAsInt() <= header ? line : OptionalInt.empty();
  }

  private static ValueColumn column(Row row, ColumnRef ref) {
    ValueColumn plain = ValueColumn.plain(ref, row.meaning().get(), row.unit().get());
    return row.base
        .map(
            b ->
                new ValueColumn(
                    ref,
                    plain.meaning(),
                    plain.unit(),
                    b.scale(),
                    b.shift(),
                    b.wrapsAt(),
                    b.around()))
        .orElse(plain);
  }

  private String shownName() {
    return name.get().isBlank() ? source : name.get().strip();
  }

  /** Lower-case letters, digits and hyphens of the name. */
  private String id() {
    String id =
        shownName().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return id.isEmpty() ? "own" : id;
  }

  /** Whether a text is a number of lines. */
  static boolean isCount(String text) {
    return whole(text).isPresent();
  }

  /** Whether a text names a column. */
  static boolean isColumn(String text) {
    return ref(text).isPresent();
  }

  private static Optional<ColumnRef> ref(String text) {
    String plain = text.strip();
    if (plain.isEmpty() || plain.matches("0+")) {
      return Optional.empty();
    }
    return Optional.of(
        whole(plain).map(ColumnRef::numbered).orElseGet(() -> ColumnRef.named(plain)));
  }

  private static Optional<Integer> whole(String text) {
    return text.strip().matches("\\d{1,3}")
        ? Optional.of(Integer.valueOf(text.strip()))
        : Optional.empty();
  }
}
