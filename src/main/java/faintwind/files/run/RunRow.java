package faintwind.files.run;

import faintwind.calibration.profile.WallClock;
import faintwind.calibration.response.TypeLetter;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.NotCounted;
import faintwind.calibration.run.NotCounted.Stretch;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.Uncertain;
import faintwind.files.ProblemList;
import faintwind.message.Where;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Reads the cells of one row of the runs table and adds what is wrong with them to a list. Where a
 * required cell is missing or wrong, nothing is returned and a problem stands in the list.
 */
final class RunRow {
  /** Arms outside this are possible, but more likely a slip of the unit. */
  private static final double SMALL_RADIUS_MM = 20;

  private static final double LARGE_RADIUS_MM = 5000;

  private final TableFile.Row row;
  private final Where where;
  private final TableNumbers numbers;
  private final ProblemList problems;
  private Optional<RunFile.Timed> timed = Optional.empty();

  RunRow(TableFile.Row row, TableNumbers numbers, String table, ProblemList problems) {
    this.row = row;
    this.numbers = numbers;
    this.problems = problems;
    Where line = Where.file(table).atLine(row.line());
    this.where = name().isEmpty() ? line : line.inRun(name());
  }

  /** Whose clock the times of the row may be noted by. */
  void clock(Optional<RunFile.Timed> recording) {
    timed = recording;
  }

  String name() {
    return row.cell("run");
  }

  String file() {
    return row.cell("file");
  }

  Where where() {
    return where;
  }

  Optional<RunKind> kind() {
    Optional<RunKind> kind = word("kind", RunKind.values(), RunKind::word);
    if (kind.isEmpty()) {
      String allowed =
          String.join(", ", Arrays.stream(RunKind.values()).map(RunKind::word).toList());
      problems.error("runs.kind-unknown", where.atColumn("kind"), row.cell("kind"), allowed);
    }
    return kind;
  }

  private <T> Optional<T> word(String column, T[] all, Function<T, String> word) {
    String cell = row.cell(column).toLowerCase(Locale.ROOT);
    return Arrays.stream(all).filter(one -> word.apply(one).equals(cell)).findFirst();
  }

  /** Start of the window; minus infinity where the cell is empty. */
  double from_s() {
    return number("from_s").orElse(Double.NEGATIVE_INFINITY);
  }

  /** End of the window; infinity where the cell is empty. */
  double to_s() {
    return number("to_s").orElse(Double.POSITIVE_INFINITY);
  }

  RunConditions conditions(NotCounted notCounted) {
    Optional<String> letter = Optional.of(row.cell("thermocouple")).filter(t -> !t.isEmpty());
    letter
        .filter(t -> TypeLetter.of(t).isEmpty())
        .ifPresent(
            t ->
                problems.error(
                    "runs.thermocouple-unknown",
                    where.atColumn("thermocouple"),
                    t,
                    TypeLetter.known()));
    return new RunConditions(
        air(AirCell.TEMPERATURE),
        air(AirCell.PRESSURE),
        air(AirCell.HUMIDITY),
        direction(),
        letter.map(t -> t.toUpperCase(Locale.ROOT)),
        row.cell("note"),
        notCounted);
  }

  /** What a person left out: {@code all}, or stretches such as {@code 120-180; 400-420}. */
  NotCounted notCounted() {
    String cell = row.cell("left_out_s").toLowerCase(Locale.ROOT);
    if (cell.equals(NotCounted.WORD_ALL)) {
      return NotCounted.ALL;
    }
    NotCounted all = NotCounted.NOTHING;
    for (String stretch : cell.isEmpty() ? new String[0] : cell.split(";")) {
      String[] ends = stretch.strip().split("\\s*[-\u2013]\\s*", -1);
      OptionalDouble from_s = numbers.read("left_out_s", ends[0]);
      OptionalDouble to_s = numbers.read("left_out_s", ends[ends.length - 1]);
      boolean good =
          ends.length == 2
              && from_s.isPresent()
              && to_s.isPresent()
              && from_s.getAsDouble() < to_s.getAsDouble();
      if (!good) {
        problems.error("runs.left-out", where.atColumn("left_out_s"), stretch.strip());
        return NotCounted.NOTHING;
      }
      all = all.with(new Stretch(from_s.getAsDouble(), to_s.getAsDouble()));
    }
    return all;
  }

  private Optional<Direction> direction() {
    Optional<Direction> direction = word("direction", Direction.values(), Direction::word);
    if (direction.isEmpty() && !isMissing("direction")) {
      problems.error("runs.direction-unknown", where.atColumn("direction"), row.cell("direction"));
    }
    return direction;
  }

  private OptionalDouble air(AirCell kind) {
    OptionalDouble value = number(kind.column());
    if (value.isPresent() && !kind.allows(value.getAsDouble())) {
      problems.error(
          "runs.air-out-of-range",
          where.atColumn(kind.column()),
          row.cell(kind.column()),
          kind.allowed());
    }
    return kind.siOf(value);
  }

  /** How the arm was turned; empty, with the problems told, where that cannot be said. */
  Optional<ArmTurning> arm() {
    OptionalDouble radius_mm = radius();
    OptionalDouble turns = turns();
    OptionalDouble turnsTime_s = positive("turns_time_s", "runs.turns-time-not-positive");
    if (isMissing("turns_time_s")) {
      String id = isMissing("turns") ? "runs.spin-cell-missing" : "runs.turns-without-time";
      problems.error(id, where.atColumn("turns_time_s"), "turns_time_s");
    }
    OptionalDouble start_s = needed("spin_start_s");
    OptionalDouble stop_s = needed("spin_stop_s");
    OptionalDouble u_radius_mm = uncertainty("u_radius_mm");
    OptionalDouble u_time_s = uncertainty("u_turns_time_s");
    Optional<Uncertain> swirl = swirl();
    boolean whole =
        List.of(radius_mm, turns, turnsTime_s, start_s, stop_s).stream()
            .allMatch(OptionalDouble::isPresent);
    if (!isInOrder(start_s, stop_s) || !whole) {
      return Optional.empty();
    }
    return Optional.of(
        new ArmTurning(
            uncertain(radius_mm, u_radius_mm, 1e-3),
            turns.getAsDouble(),
            uncertain(turnsTime_s, u_time_s, 1),
            start_s.getAsDouble(),
            stop_s.getAsDouble(),
            swirl,
            number("first_click_s")));
  }

  private boolean isInOrder(OptionalDouble start_s, OptionalDouble stop_s) {
    boolean backwards =
        start_s.isPresent() && stop_s.isPresent() && stop_s.getAsDouble() <= start_s.getAsDouble();
    if (backwards) {
      problems.error(
          "runs.spin-stops-before-start",
          where.atColumn("spin_stop_s"),
          row.cell("spin_stop_s"),
          row.cell("spin_start_s"));
    }
    return !backwards;
  }

  private OptionalDouble radius() {
    needed("radius_mm");
    OptionalDouble radius_mm = positive("radius_mm", "runs.radius-not-positive");
    if (radius_mm.isPresent()) {
      double value = radius_mm.getAsDouble();
      if (value < SMALL_RADIUS_MM || value > LARGE_RADIUS_MM) {
        problems.warning("runs.radius-odd", where.atColumn("radius_mm"), row.cell("radius_mm"));
      }
    }
    return radius_mm;
  }

  private OptionalDouble turns() {
    if (isMissing("turns") && !isMissing("turns_time_s")) {
      problems.error("runs.time-without-turns", where.atColumn("turns"), "");
    } else if (isMissing("turns")) {
      needed("turns");
    }
    OptionalDouble turns = positive("turns", "runs.turns-not-positive");
    if (turns.isPresent() && turns.getAsDouble() != Math.rint(turns.getAsDouble())) {
      problems.warning("runs.turns-not-whole", where.atColumn("turns"), row.cell("turns"));
    }
    return turns;
  }

  private Optional<Uncertain> swirl() {
    OptionalDouble swirl_pct = number("swirl_pct");
    OptionalDouble u_pct = uncertainty("u_swirl_pct");
    if (swirl_pct.isEmpty()) {
      return Optional.empty();
    }
    if (swirl_pct.getAsDouble() < 0 || swirl_pct.getAsDouble() >= 50) {
      problems.error("runs.swirl-out-of-range", where.atColumn("swirl_pct"), row.cell("swirl_pct"));
    }
    return Optional.of(uncertain(swirl_pct, u_pct, 0.01));
  }

  /** The speed another instrument gave. */
  Optional<Uncertain> reference() {
    if (isMissing("speed_m_s")) {
      problems.error("runs.speed-missing", where.atColumn("speed_m_s"), "");
    }
    OptionalDouble speed_m_s = positive("speed_m_s", "runs.speed-not-positive");
    OptionalDouble u_m_s = uncertainty("u_speed_m_s");
    return speed_m_s.isEmpty() ? Optional.empty() : Optional.of(uncertain(speed_m_s, u_m_s, 1));
  }

  private boolean isMissing(String column) {
    return row.cell(column).isEmpty();
  }

  private OptionalDouble needed(String column) {
    if (isMissing(column)) {
      problems.error("runs.spin-cell-missing", where.atColumn(column), column);
    }
    return number(column);
  }

  private OptionalDouble positive(String column, String id) {
    OptionalDouble value = number(column);
    if (value.isPresent() && value.getAsDouble() <= 0) {
      problems.error(id, where.atColumn(column), row.cell(column));
      return OptionalDouble.empty();
    }
    return value;
  }

  private OptionalDouble uncertainty(String column) {
    OptionalDouble value = number(column);
    if (value.isPresent() && value.getAsDouble() < 0) {
      problems.error("runs.u-negative", where.atColumn(column), row.cell(column));
      return OptionalDouble.empty();
    }
    return value;
  }

  private OptionalDouble number(String column) {
    String cell = row.cell(column);
    if (cell.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (TableNumbers.TIMES.contains(column) && cell.contains(":")) {
      return clockTime(column, cell);
    }
    OptionalDouble value = numbers.read(column, cell);
    if (value.isEmpty()) {
      problems.error(numbers.complaint(cell), where.atColumn(column), LogHead.excerpt(cell));
    }
    return value;
  }

  /** The recording's own time at which a clock on the wall showed this. */
  private OptionalDouble clockTime(String column, String cell) {
    if (timed.isEmpty()) {
      return OptionalDouble.empty(); // the recording was refused, and that is told
    }
    if (timed.get().clock().isEmpty()) {
      problems.error("runs.clock-unknown", where.atColumn(column), LogHead.excerpt(cell), file());
      return OptionalDouble.empty();
    }
    Series signal = timed.get().recording().signal();
    WallClock.Reading read =
        timed.get().clock().get().read(cell, signal.first_s(), signal.last_s());
    if (read.outcome() == WallClock.Outcome.FOUND) {
      return OptionalDouble.of(read.time_s());
    }
    String why = read.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-');
    String id = "runs.clock-" + why;
    problems.error(id, where.atColumn(column), LogHead.excerpt(cell));
    return OptionalDouble.empty();
  }

  private static Uncertain uncertain(OptionalDouble value, OptionalDouble u, double scale) {
    double si = value.orElseThrow() * scale;
    return u.isPresent() ? Uncertain.of(si, u.getAsDouble() * scale) : Uncertain.of(si);
  }
}
