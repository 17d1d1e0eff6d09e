package faintwind.calibration.draft;

import faintwind.calibration.profile.ColumnRef;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineForm;
import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.ValueColumn;
import faintwind.calibration.profile.ValueUnit;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Drafts a profile from the first lines of a log. For one log. */
public final class ProfileDraft {
  private static final int MOST_MISSING = 3;

  private final SampleTable table;
  private final Where where;
  private final ZoneId zone;
  private final List<Problem> notes = new ArrayList<>();
  private final List<ValueColumn> columns = new ArrayList<>();
  private final Set<Meaning> taken = EnumSet.noneOf(Meaning.class);

  private ProfileDraft(SampleTable table, Where where, ZoneId zone) {
    this.table = table;
    this.where = where;
    this.zone = zone;
  }

  /**
   * Drafts it; the notes say what was taken for granted and what was left out.
   *
   * @param lines the first lines, from the beginning
   * @param name how messages name the log
   * @param zone whose clock dates without an offset are taken to be of
   * @return refused where there is no table in the lines, no time or no signal
   */
  public static Checked<ImportProfile> of(List<String> lines, String name, ZoneId zone) {
    Where where = Where.file(name);
    Optional<SampleTable> table = SampleTable.of(lines);
    return table.isEmpty()
        ? Checked.refused(Problem.error("draft.no-table", where, String.valueOf(lines.size())))
        : new ProfileDraft(table.get(), where, zone).draft(name);
  }

  private Checked<ImportProfile> draft(String name) {
    Optional<DraftTime> time = DraftTime.of(table, this::ref, zone);
    if (time.isEmpty()) {
      return Checked.refused(Problem.error("draft.no-time", where, heads()));
    }
    time.get().notes().forEach(id -> notes.add(Problem.warning(id, where, zone.getId())));
    IntStream.range(0, table.width())
        .filter(column -> !time.get().used().contains(column))
        .forEach(this::take);
    boolean balls = taken.contains(Meaning.HEATED) && taken.contains(Meaning.REFERENCE);
    if (!balls && !taken.contains(Meaning.SIGNAL)) {
      return Checked.refused(Problem.error("draft.no-signal", where, heads()));
    }
    columns.removeIf(c -> balls ? c.meaning() == Meaning.SIGNAL : isBall(c.meaning()));
    TimeColumn form = time.get().column();
    return Checked.ok(new ImportProfile(id(name), name, lines(), form, columns), notes);
  }

  private static boolean isBall(Meaning meaning) {
    return meaning == Meaning.HEATED || meaning == Meaning.REFERENCE;
  }

  private LineForm lines() {
    OptionalInt names = table.namesLine();
    int head = table.head().size();
    boolean last = names.isPresent() && names.getAsInt() == head;
    OptionalInt namesLine = last ? OptionalInt.empty() : names;
    return new LineForm(table.delimiter(), mark(), head, namesLine, "", missing());
  }

  /** That of the two marks which stands in more numbers. */
  private char mark() {
    if (table.delimiter() == ',') {
      return '.';
    }
    return count(SampleCell.COMMA) > count(SampleCell.POINT) ? ',' : '.';
  }

  private long count(Pattern form) {
    return table.rows().stream()
        .flatMap(List::stream)
        .filter(cell -> form.matcher(cell).matches())
        .count();
  }

  private List<String> missing() {
    return columns.stream()
        .map(column -> index(column.column()))
        .flatMap(index -> table.column(index).stream())
        .filter(cell -> !SampleCell.isValue(cell))
        .distinct()
        .limit(MOST_MISSING)
        .toList();
  }

  private int index(ColumnRef ref) {
    return ref.isNamed()
        ? table.head().get(table.namesLine().orElseThrow() - 1).indexOf(ref.name())
        : ref.number() - 1;
  }

  /** By its name where that is there once, else by its number. */
  private ColumnRef ref(int column) {
    OptionalInt line = table.namesLine();
    if (line.isPresent()) {
      List<String> names = table.head().get(line.getAsInt() - 1);
      String name = names.get(column);
      if (!name.isEmpty() && names.indexOf(name) == names.lastIndexOf(name)) {
        return ColumnRef.named(name);
      }
    }
    return ColumnRef.numbered(column + 1);
  }

  private void take(int column) {
    List<String> cells = table.column(column);
    long numbers =
        cells.stream()
            .filter(c -> SampleCell.isNumber(c) || !SampleCell.after(c).isEmpty())
            .count();
    List<String> heads = new ArrayList<>(table.heads(column));
    String after = cells.stream().map(SampleCell::after).findFirst().orElse("");
    heads.add(after);
    Optional<ValueUnit> unit = SampleUnit.value(heads);
    Optional<Meaning> meaning = HeadWords.meaning(heads, unit);
    if (2 * numbers < cells.size() || meaning.isEmpty() || !taken.add(meaning.get())) {
      notes.add(Problem.warning("draft.left-out", where, ref(column).text()));
      return;
    }
    if (unit.isEmpty()) {
      notes.add(Problem.warning("draft.unit-unknown", where, ref(column).text()));
    }
    columns.add(
        new ValueColumn(
            ref(column),
            meaning.get(),
            unit.orElse(ValueUnit.COUNTS),
            1,
            0,
            OptionalDouble.empty(),
            new ValueColumn.Around("", after)));
  }

  private String heads() {
    return String.join(
        " | ", IntStream.range(0, table.width()).mapToObj(c -> ref(c).text()).toList());
  }

  private static String id(String name) {
    String plain = name.replaceFirst("\\.[A-Za-z]{1,4}$", "").toLowerCase(Locale.ROOT);
    String id = plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return id.isEmpty() ? "own" : id;
  }
}
