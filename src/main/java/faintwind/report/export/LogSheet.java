package faintwind.report.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Row;

/**
 * The rows of the sheet that a log is pasted into: what was pasted, the filter's speed, and for
 * comparison the speed by a straight line through the rows about each.
 */
final class LogSheet {
  static final String NAME = "Log";

  /** Row of the headings, counted from 1. */
  static final int HEAD = 2;

  /** Columns that a person fills. */
  static final int INPUTS = 4;

  private static final List<String> RESULTS =
      List.of("speed_m_s", "u95_m_s", "flag", "speed_by_line_m_s");

  /** Columns that stay in sight. */
  static final int FROZEN = INPUTS + RESULTS.size();

  /** What the chain to the speed begins with. */
  static final List<String> USED =
      List.of("signal", "rate", "air_C", "pressure_hPa", "rh_pct", "supply_V");

  private final String signal;
  private final FilterColumns filter;
  private final SheetChain chain;

  LogSheet(ExportedFormula exported, Set<String> named, FilterColumns filter) {
    this.signal = exported.calibration().signal().unit().column();
    this.filter = filter;
    Map<String, Integer> inputs = new LinkedHashMap<>();
    USED.forEach(name -> inputs.put(name, FROZEN + inputs.size()));
    this.chain =
        new SheetChain(
            exported.complete().relations().speed(), inputs, named, FROZEN + USED.size());
  }

  List<String> headings() {
    List<String> headings = new ArrayList<>(List.of("time_s", signal, "air_C", "supply_V"));
    headings.addAll(RESULTS);
    USED.forEach(name -> headings.add(name + " used"));
    chain.columns().forEach(column -> headings.add(column.heading()));
    return headings;
  }

  /** Writes a row's formulas. */
  void fill(Row row) {
    int at = row.getRowNum() + 1;
    List<String> formulas = new ArrayList<>(results(at));
    formulas.add(line("FORECAST($A" + at + ",", at));
    formulas.add(line("SLOPE(", at));
    formulas.add(String.format(Locale.ROOT, "IF($C%d=\"\",fw_air_C,$C%d)", at, at));
    formulas.add("fw_pressure_hPa");
    formulas.add("fw_rh_pct");
    formulas.add(String.format(Locale.ROOT, "IF($D%d=\"\",fw_nominal_supply_V,$D%d)", at, at));
    for (SheetChain.Column column : chain.columns()) {
      formulas.add(SheetChain.at(column.formula(), at));
    }
    int place = INPUTS;
    for (String formula : formulas) {
      row.createCell(place++).setCellFormula(formula);
    }
  }

  private List<String> results(int at) {
    String speed = filtered("speed_m_s", at);
    String byLine = "$" + SheetChain.letters(chain.column("speed_m_s")) + at;
    String speedOrZero =
        String.format(
            Locale.ROOT,
            "IF($A%d=\"\",\"\",IFERROR(IF(%s=\"\",\"\",IF(%s<1E-9,0,%s)),\"\"))",
            at,
            speed,
            speed,
            speed);
    String u95 =
        String.format(
            Locale.ROOT,
            "IF($E%d=\"\",\"\",IFERROR(SQRT((%s)^2+%s^2),\"\"))",
            at,
            band("$E" + at),
            filtered("u95_filter_m_s", at));
    String flag = String.format(Locale.ROOT, "IF($A%d=\"\",\"\",%s)", at, filtered("flag", at));
    String line =
        String.format(
            Locale.ROOT, "IF($A%d=\"\",\"\",IFERROR(IF(%s<1E-9,0,%s),\"\"))", at, byLine, byLine);
    return List.of(speedOrZero, u95, flag, line);
  }

  private String filtered(String name, int at) {
    return "Filter!" + filter.letters(name) + at;
  }

  /** Value or slope at a row of the straight line through the rows about it. */
  private static String line(String function, int at) {
    if (at <= HEAD + 2) {
      return "NA()";
    }
    String rows = "MIN(ROW()-" + (HEAD + 1) + ",fw_rows_each_side)";
    String about = "OFFSET($%s" + at + ",-" + rows + ",0,2*" + rows + "+1,1)";
    return function
        + String.format(Locale.ROOT, about, "B")
        + ","
        + String.format(Locale.ROOT, about, "A")
        + ")";
  }

  /** The table's expanded uncertainty at a speed, by a straight line between its rows. */
  private static String band(String speed) {
    String row = "MATCH(MAX(" + speed + ",INDEX(fw_table_speed,1)),fw_table_speed,1)";
    String low = "INDEX(fw_table_speed," + row + ")";
    String high = "INDEX(fw_table_speed," + row + "+1)";
    String share =
        "((MAX(" + speed + ",INDEX(fw_table_speed,1))-" + low + ")/(" + high + "-" + low + "))";
    String uLow = "INDEX(fw_table_u95," + row + ")";
    return uLow + "+" + share + "*(INDEX(fw_table_u95," + row + "+1)-" + uLow + ")";
  }
}
