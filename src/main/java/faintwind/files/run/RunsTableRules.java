package faintwind.files.run;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.NotCounted;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Series;
import faintwind.files.NumberCell;
import faintwind.files.ProblemList;
import faintwind.message.Where;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What must hold between the cells of a runs table and the files it names. */
final class RunsTableRules {
  /** Columns without which no row can be read. */
  static final List<String> NEEDED = List.of("run", "file", "kind");

  static final Set<String> KNOWN =
      Set.of(
          ("run file kind from_s to_s radius_mm u_radius_mm turns turns_time_s u_turns_time_s"
                  + " first_click_s swirl_pct u_swirl_pct thermocouple spin_start_s spin_stop_s speed_m_s"
                  + " u_speed_m_s air_C pressure_hPa rh_pct direction note left_out_s")
              .split(" "));

  private static final int FEWEST_ROWS = 5;

  private RunsTableRules() {}

  static void columns(TableFile cells, Where head, ProblemList problems) {
    for (String column : NEEDED) {
      if (!cells.columns().contains(column)) {
        String found = LogHead.excerpt(String.join(", ", cells.columns()));
        problems.error("file.column-missing", head, found, column);
      }
    }
    for (String column : new TreeSet<>(cells.columns())) {
      if (!column.isEmpty() && !KNOWN.contains(column)) {
        problems.warning("runs.column-unknown", head.atColumn(column), column);
      }
    }
    if (cells.rows().isEmpty() && cells.problems().isEmpty()) {
      problems.error("runs.no-rows", head, "");
    }
  }

  /** Whether the first row holds units or other words of a head; the problem then says so. */
  static boolean secondHead(TableFile cells, String table, ProblemList problems) {
    if (cells.rows().isEmpty()) {
      return false;
    }
    TableFile.Row first = cells.rows().get(0);
    List<String> there =
        cells.columns().stream().filter(column -> !first.cell(column).isEmpty()).toList();
    boolean needed = NEEDED.stream().anyMatch(there::contains);
    boolean words = there.stream().map(first::cell).noneMatch(cell -> cell.matches(".*\\d.*"));
    if (needed || !words) {
      return false;
    }
    Where place = Where.file(table).atLine(first.line()).atColumn(there.get(0));
    problems.error("file.second-head", place, LogHead.excerpt(first.cell(there.get(0))));
    return true;
  }

  static void names(TableFile cells, String table, ProblemList problems) {
    Map<String, Integer> lines = new HashMap<>();
    for (TableFile.Row row : cells.rows()) {
      Where place = Where.file(table).atLine(row.line()).atColumn("run");
      String name = row.cell("run");
      if (name.isEmpty()) {
        problems.error("runs.name-empty", place, "");
        continue;
      }
      Integer before = lines.putIfAbsent(name, row.line());
      if (before != null) {
        problems.error("runs.name-doubled", place, name, String.valueOf(before));
      }
    }
  }

  /** The part of a recording that a row speaks of. */
  static Optional<Recording> window(Recording whole, RunRow row, ProblemList problems) {
    double from_s = row.from_s();
    double to_s = row.to_s();
    Series signal = whole.signal();
    String first = NumberCell.shown(signal.first_s());
    String last = NumberCell.shown(signal.last_s());
    if (from_s >= to_s) {
      problems.error(
          "runs.window-reversed",
          row.where().atColumn("to_s"),
          NumberCell.shown(to_s),
          NumberCell.shown(from_s));
      return Optional.empty();
    }
    if (from_s > signal.last_s() || to_s < signal.first_s()) {
      if (clockUnit(signal, from_s, to_s, row.where().atColumn("from_s"), problems)) {
        return Optional.empty();
      }
      problems.error(
          "runs.window-outside", row.where().atColumn("from_s"), span(from_s, to_s), first, last);
      return Optional.empty();
    }
    Recording part = whole.window(from_s, to_s);
    if (part.signal().size() < FEWEST_ROWS) {
      problems.error(
          "runs.too-few-rows",
          row.where().atColumn("file"),
          String.valueOf(part.signal().size()),
          String.valueOf(FEWEST_ROWS));
      return Optional.empty();
    }
    return Optional.of(part);
  }

  private static String span(double from_s, double to_s) {
    String from = Double.isFinite(from_s) ? NumberCell.shown(from_s) : "…";
    String to = Double.isFinite(to_s) ? NumberCell.shown(to_s) : "…";
    return from + " – " + to;
  }

  /** What does not count; the whole run where hardly a reading would be left. */
  static NotCounted notCounted(Recording part, RunRow row) {
    NotCounted said = row.notCounted();
    int left = said.of(part.signal()).map(Series::size).orElse(0);
    return left < FEWEST_ROWS ? NotCounted.ALL : said;
  }

  /** The spin must lie within its recording; one missed sample at either end is forgiven. */
  static void spin(ArmTurning arm, Recording part, RunRow row, ProblemList problems) {
    Series signal = part.signal();
    double step_s = (signal.last_s() - signal.first_s()) / (signal.size() - 1);
    String first = NumberCell.shown(signal.first_s());
    String last = NumberCell.shown(signal.last_s());
    boolean outside = arm.spinStart_s() > signal.last_s() || arm.spinStop_s() < signal.first_s();
    Where start = row.where().atColumn("spin_start_s");
    if (outside && clockUnit(signal, arm.spinStart_s(), arm.spinStop_s(), start, problems)) {
      return;
    }
    if (arm.spinStart_s() < signal.first_s() - 2 * step_s || arm.spinStart_s() > signal.last_s()) {
      String found = NumberCell.shown(arm.spinStart_s());
      problems.error("runs.spin-outside", row.where().atColumn("spin_start_s"), found, first, last);
    }
    if (arm.spinStop_s() > signal.last_s() + 2 * step_s || arm.spinStop_s() < signal.first_s()) {
      String found = NumberCell.shown(arm.spinStop_s());
      problems.error("runs.spin-outside", row.where().atColumn("spin_stop_s"), found, first, last);
    }
    firstClick(arm, row.where().atColumn("first_click_s"), problems);
    double spin_s = arm.spinStop_s() - arm.spinStart_s();
    if (arm.turnsTime_s().value() > 1.05 * spin_s) {
      problems.warning(
          "runs.turns-longer-than-spin",
          row.where().atColumn("turns_time_s"),
          NumberCell.shown(arm.turnsTime_s().value()),
          NumberCell.shown(spin_s));
    }
  }

  /** A click before the arm turned, by more than a turn, or after it stopped is of another spin. */
  private static void firstClick(ArmTurning arm, Where place, ProblemList problems) {
    if (arm.firstClick_s().isEmpty()) {
      return;
    }
    double click_s = arm.firstClick_s().getAsDouble();
    double turn_s = arm.turnsTime_s().value() / Math.max(1, arm.turns());
    if (click_s < arm.spinStart_s() - turn_s || click_s > arm.spinStop_s()) {
      problems.error(
          "runs.click-outside",
          place,
          NumberCell.shown(click_s),
          NumberCell.shown(arm.spinStart_s()),
          NumberCell.shown(arm.spinStop_s()));
    }
  }

  /**
   * Times that lie outside a recording but inside it by another unit of its clock.
   *
   * @return whether they do; the problem then says so
   */
  private static boolean clockUnit(
      Series signal, double from_s, double to_s, Where place, ProblemList problems) {
    boolean minutes = inside(signal, from_s / 60) && inside(signal, to_s / 60);
    boolean milliseconds = inside(signal, from_s * 1000) && inside(signal, to_s * 1000);
    if (minutes == milliseconds) {
      return false;
    }
    problems.error(
        minutes ? "runs.clock-in-minutes" : "runs.clock-in-ms",
        place,
        span(from_s, to_s),
        NumberCell.shown(signal.first_s()),
        NumberCell.shown(signal.last_s()));
    return true;
  }

  private static boolean inside(Series signal, double t_s) {
    return !Double.isFinite(t_s) || (t_s >= signal.first_s() && t_s <= signal.last_s());
  }

  /** How many runs there must be for a formula. */
  static void enough(List<Run> runs, String table, ProblemList problems) {
    Where where = Where.file(table);
    List<Run> heated =
        runs.stream().filter(run -> run.kind() != RunKind.ZERO && !run.isLeftOut()).toList();
    if (heated.size() < 2) {
      problems.error("runs.only-one", where, String.valueOf(heated.size()));
    } else if (heated.stream().allMatch(run -> run.kind() == RunKind.STILL)) {
      problems.error("runs.nothing-moves", where, "");
    }
  }

  /** What the runs must have in common. */
  static void together(List<Run> runs, String table, ProblemList problems) {
    Where where = Where.file(table);
    TreeSet<String> units = new TreeSet<>();
    runs.forEach(run -> units.add(run.recording().unit().column()));
    if (units.size() > 1) {
      problems.error("runs.units-differ", where, String.join(", ", units));
    }
    for (int i = 0; i < runs.size(); i++) {
      for (Run other : runs.subList(i + 1, runs.size())) {
        overlap(runs.get(i), other, where, problems);
      }
    }
  }

  private static void overlap(Run one, Run other, Where where, ProblemList problems) {
    Series a = one.recording().signal();
    Series b = other.recording().signal();
    double shared_s = Math.min(a.last_s(), b.last_s()) - Math.max(a.first_s(), b.first_s());
    if (one.file().equals(other.file()) && shared_s > 0) {
      problems.warning(
          "runs.windows-overlap",
          where.inRun(other.name()),
          one.name(),
          NumberCell.shown(shared_s));
    }
  }
}
