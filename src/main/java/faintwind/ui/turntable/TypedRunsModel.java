package faintwind.ui.turntable;

import faintwind.calibration.plan.NotedSpins;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.job.turntable.TypedRuns;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.part.NumberModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The spins of one staircase recording as a person noted them, row by row. */
public final class TypedRunsModel {
  /** A count may begin or end a little outside what was noted of the turning, s. */
  private static final double COUNT_BEYOND_S = 5;

  private final Messages words;
  private final ObservableList<Row> rows = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Path>> recording =
      new SimpleObjectProperty<>(Optional.empty());
  private final TypedFlowsModel flows;
  private List<PlannedSpin> planned = List.of();
  private List<String> written = List.of();

  /** One spin, each number as typed. */
  public static final class Row {
    private final NumberModel radius;
    private final NumberModel turns;
    private final NumberModel time;
    private final NumberModel start;
    private final NumberModel stop;
    private final ObjectProperty<Optional<Direction>> direction =
        new SimpleObjectProperty<>(Optional.empty());

    Row(Messages words) {
      radius = new NumberModel("mm", words);
      turns = new NumberModel("", words);
      time = new NumberModel("s", words);
      start = new NumberModel("s", words);
      stop = new NumberModel("s", words);
    }

    public NumberModel radius() {
      return radius;
    }

    public NumberModel turns() {
      return turns;
    }

    public NumberModel time() {
      return time;
    }

    public NumberModel start() {
      return start;
    }

    public NumberModel stop() {
      return stop;
    }

    public ObjectProperty<Optional<Direction>> direction() {
      return direction;
    }

    /** The fields in reading order. */
    public List<NumberModel> fields() {
      return List.of(radius, turns, time, start, stop);
    }

    /** The radius alone, taken over from the row before or from a plan, makes no row. */
    boolean isEmpty() {
      return List.of(turns, time, start, stop).stream().allMatch(f -> f.typed().get().isBlank());
    }
  }

  TypedRunsModel(Messages words) {
    this.words = words;
    flows = new TypedFlowsModel(words);
    addRow();
  }

  public ObservableList<Row> rows() {
    return FXCollections.unmodifiableObservableList(rows);
  }

  /** Reference flows and carried air. */
  public TypedFlowsModel flows() {
    return flows;
  }

  /** The recording that the spins belong to. */
  public ObjectProperty<Optional<Path>> recording() {
    return recording;
  }

  /** One more row, with the radius of the row before: the arm seldom changes. */
  public void addRow() {
    Row row = new Row(words);
    if (!rows.isEmpty()) {
      row.radius().set(rows.get(rows.size() - 1).radius().typed().get());
    }
    rows.add(row);
  }

  /**
   * Rows for the spins of a plan: radius and direction as planned, the rest to be typed as it
   * happened. What was typed already stays.
   */
  public void follow(List<PlannedSpin> spins) {
    planned = List.copyOf(spins);
    for (int i = 0; i < spins.size(); i++) {
      if (i == rows.size()) {
        rows.add(new Row(words));
      }
      Row row = rows.get(i);
      PlannedSpin spin = spins.get(i);
      if (row.isEmpty()) {
        row.radius().set(plain(1000 * spin.radius_m().value()));
        row.direction().set(Optional.of(spin.direction()));
      }
      row.turns().remark().set(words.text("turntable.typed.planned", spin.turns()));
    }
  }

  private static String plain(double value) {
    return Numerals.digits(value, 6);
  }

  /** All that is in the boxes of rows that are not empty. */
  private List<String> typed() {
    List<String> typed = new ArrayList<>(flows.typed());
    for (Row row : rows) {
      if (!row.isEmpty()) {
        row.fields().forEach(f -> typed.add(f.typed().get().strip()));
      }
    }
    return typed;
  }

  /** What is typed now is in a table. */
  void markWritten() {
    written = typed();
  }

  /** Whether something is typed that is in no table. */
  boolean isUnsaved() {
    List<String> now = typed();
    return !now.equals(written) && now.stream().anyMatch(text -> !text.isEmpty());
  }

  /** The numbers, or every field that is missing or not a number. Empty rows are left out. */
  public Checked<TypedRuns.Noted> read() {
    List<Problem> problems = new ArrayList<>();
    if (recording.get().isEmpty()) {
      problems.add(Problem.error("turntable.typed.no-recording", Where.NOWHERE, ""));
    }
    List<TypedRuns.Spin> spins = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (!rows.get(i).isEmpty()) {
        read(rows.get(i), i + 1, problems).ifPresent(spins::add);
      }
    }
    List<TypedRuns.Flow> steady = flows.read(problems);
    TypedRuns.Arm arm = flows.arm(problems);
    if (spins.isEmpty() && steady.isEmpty() && problems.isEmpty()) {
      problems.add(Problem.error("turntable.typed.no-spin", Where.NOWHERE, ""));
    }
    return problems.isEmpty()
        ? Checked.ok(
            new TypedRuns.Noted(recording.get().orElseThrow(), spins, steady, arm),
            questions(spins))
        : Checked.refused(problems);
  }

  private List<Problem> questions(List<TypedRuns.Spin> spins) {
    return NotedSpins.questions(
        planned,
        spins.stream()
            .map(
                spin ->
                    new ArmTurning(
                        Uncertain.of(spin.radius_mm() / 1000),
                        spin.turns(),
                        Uncertain.of(spin.turnsTime_s()),
                        spin.start_s(),
                        spin.stop_s(),
                        Optional.empty()))
            .toList());
  }

  private Optional<TypedRuns.Spin> read(Row row, int number, List<Problem> problems) {
    List<String> names =
        List.of("radius_mm", "turns", "turns_time_s", "spin_start_s", "spin_stop_s");
    double[] values = new double[names.size()];
    boolean whole = true;
    for (int i = 0; i < values.length; i++) {
      NumberModel field = row.fields().get(i);
      field.judge();
      Optional<Amount> amount = field.amount().filter(a -> a.bound() == Amount.Bound.EXACT);
      if (amount.isEmpty()) {
        problems.add(
            Problem.error(
                "turntable.typed.not-a-number",
                Where.NOWHERE.atLine(number).atColumn(names.get(i)),
                field.typed().get()));
        whole = false;
      } else {
        values[i] = amount.get().value();
      }
    }
    if (whole) {
      whole = possible(values, number, names, problems);
    }
    return whole
        ? Optional.of(
            new TypedRuns.Spin(
                values[0], values[1], values[2], values[3], values[4], row.direction().get()))
        : Optional.empty();
  }

  /** Nothing of a spin is negative, it stops after it starts, and its turns lie within it. */
  private static boolean possible(
      double[] values, int number, List<String> names, List<Problem> problems) {
    boolean possible = true;
    for (int i = 0; i < values.length; i++) {
      boolean start = i == 3;
      if (start ? values[i] < 0 : values[i] <= 0) {
        problems.add(
            Problem.error(
                "turntable.typed.not-positive",
                Where.NOWHERE.atLine(number).atColumn(names.get(i)),
                plain(values[i])));
        possible = false;
      }
    }
    double lasted_s = values[4] - values[3];
    if (possible && lasted_s <= 0) {
      problems.add(
          Problem.error(
              "turntable.typed.stop-first",
              Where.NOWHERE.atLine(number).atColumn(names.get(4)),
              plain(values[4]),
              plain(values[3])));
      possible = false;
    } else if (possible && values[2] > lasted_s + COUNT_BEYOND_S) {
      problems.add(
          Problem.error(
              "turntable.typed.count-longer",
              Where.NOWHERE.atLine(number).atColumn(names.get(2)),
              plain(values[2]),
              plain(lasted_s)));
      possible = false;
    }
    return possible;
  }
}
