package faintwind.files.air;

import faintwind.calibration.field.StretchMean;
import faintwind.files.NumberCell;
import faintwind.files.ProblemList;
import faintwind.files.RowText;
import faintwind.files.run.TableFile;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A row that names a place and says either when the instrument was there or what was read.
 *
 * @param name of the place or point
 * @param line in the table
 * @param stay when, on the clock of the log
 * @param typed speed and its expanded uncertainty
 * @param note free text
 */
public record MeasuredRow(
    String name, int line, Optional<Stay> stay, Optional<Typed> typed, String note) {
  static final List<String> STAY = List.of("from_s", "to_s");
  static final List<String> TYPED = List.of("speed_m_s", "u95_m_s");
  private static final String NOTE = "note";
  private static final List<String> OTHERS = List.of("depth_mm", "up_mm", NOTE);

  /** From one time of a log to another. */
  public record Stay(double from_s, double to_s) {}

  /** What a person wrote down. */
  public record Typed(double speed_m_s, double u95_m_s) {}

  /** Every column that a table of such rows may have. */
  static Set<String> columns(String nameColumn) {
    return Stream.of(List.of(nameColumn), STAY, TYPED, OTHERS)
        .flatMap(List::stream)
        .collect(Collectors.toSet());
  }

  /** Reads the rows of a table that is led by a column of names. */
  static List<MeasuredRow> read(
      TableFile table, String nameColumn, Where where, ProblemList problems) {
    List<MeasuredRow> rows = new ArrayList<>();
    for (TableFile.Row row : table.rows()) {
      Where here = where.atLine(row.line());
      String name = row.cell(nameColumn);
      if (name.isEmpty()) {
        problems.error("air.no-name", here.atColumn(nameColumn), "");
      }
      List<OptionalDouble> stay = numbers(table, row, STAY, here, problems);
      List<OptionalDouble> typed = numbers(table, row, TYPED, here, problems);
      judge(stay, typed, here, problems);
      if (Stream.of(stay, typed).flatMap(List::stream).allMatch(OptionalDouble::isEmpty)) {
        problems.error("air.nothing-measured", here, name);
      }
      rows.add(
          new MeasuredRow(
              name,
              row.line(),
              both(stay).map(n -> new Stay(n.get(0), n.get(1))),
              both(typed).map(n -> new Typed(n.get(0), n.get(1))),
              row.cell(NOTE)));
    }
    return rows;
  }

  /** The columns of {@link #cells}. */
  static String head() {
    return Stream.of(STAY, TYPED, List.of(NOTE))
        .flatMap(List::stream)
        .collect(Collectors.joining(","));
  }

  /** The row's cells after those that say where it is; people's text is harmless in a sheet. */
  String cells() {
    return Stream.of(
            stay.map(s -> NumberCell.shown(s.from_s())).orElse(""),
            stay.map(s -> NumberCell.shown(s.to_s())).orElse(""),
            typed.map(t -> NumberCell.shown(t.speed_m_s())).orElse(""),
            typed.map(t -> NumberCell.shown(t.u95_m_s())).orElse(""),
            RowText.harmless(note))
        .collect(Collectors.joining(","));
  }

  private static List<OptionalDouble> numbers(
      TableFile table, TableFile.Row row, List<String> columns, Where here, ProblemList problems) {
    List<OptionalDouble> numbers = new ArrayList<>();
    for (String column : columns) {
      String cell = row.cell(column);
      OptionalDouble number = table.number(row, column);
      if (!cell.isEmpty() && number.isEmpty()) {
        problems.error(table.complaint(cell), here.atColumn(column), cell);
      } else if (TYPED.contains(column)) {
        StretchMean.SPEED
            .trouble(
                number.isPresent() ? NumberCell.shown(number.getAsDouble()) : cell,
                here.atColumn(column))
            .ifPresent(problems::add);
      }
      numbers.add(number);
    }
    return numbers;
  }

  private static void judge(
      List<OptionalDouble> stay, List<OptionalDouble> typed, Where here, ProblemList problems) {
    boolean half = isHalf(stay) || isHalf(typed);
    boolean twice = both(stay).isPresent() && both(typed).isPresent();
    if (half) {
      problems.error("air.half-a-row", here, "");
    } else if (twice) {
      problems.error("air.two-answers", here, "");
    }
    if (both(stay).filter(n -> n.get(1) <= n.get(0)).isPresent()) {
      String end = NumberCell.shown(stay.get(1).orElseThrow());
      problems.add(Problem.error("air.ends-before", here.atColumn(STAY.get(1)), end));
    }
  }

  private static boolean isHalf(List<OptionalDouble> two) {
    return two.get(0).isPresent() != two.get(1).isPresent();
  }

  private static Optional<List<Double>> both(List<OptionalDouble> two) {
    return two.stream().allMatch(OptionalDouble::isPresent)
        ? Optional.of(two.stream().map(OptionalDouble::getAsDouble).toList())
        : Optional.empty();
  }
}
