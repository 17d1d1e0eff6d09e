package faintwind.report.export;

import faintwind.calibration.response.Relation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * The chain from signal to speed as columns of a sheet: one column a formula, and one for each
 * round of a formula that improves itself.
 */
final class SheetChain {
  static final int ROUNDS = 4;
  private static final String PREFIX = "fw_";

  /**
   * A column.
   *
   * @param heading what it gives, with its unit
   * @param formula its formula, with the places of the others put in
   */
  record Column(String heading, Expression formula) {}

  private final Set<String> named;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<Column> columns = new ArrayList<>();
  private final int first;

  /**
   * The columns.
   *
   * @param chain the formulas
   * @param inputs column of each input, counted from 0
   * @param named numbers that have a name in the workbook
   * @param first column of the first formula
   */
  SheetChain(List<Relation> chain, Map<String, Integer> inputs, Set<String> named, int first) {
    this.named = named;
    this.first = first;
    places.putAll(inputs);
    for (Relation relation : chain) {
      relation.start().ifPresent(start -> add(relation, "0", start));
      int rounds = relation.start().isPresent() ? ROUNDS : 1;
      for (int i = 1; i <= rounds; i++) {
        add(relation, i == rounds ? "" : String.valueOf(i), relation.formula());
      }
    }
  }

  private void add(Relation relation, String round, String formula) {
    Map<String, Integer> now = Map.copyOf(places);
    Expression typed = ExpressionReader.read(formula).renamed(name -> place(now, name));
    String heading = relation.name() + (round.isEmpty() ? "" : " (" + round + ")");
    String unit = relation.unit().equals("1") ? "" : " [" + relation.unit() + "]";
    places.put(relation.name(), first + columns.size());
    columns.add(new Column(heading + unit, typed));
  }

  private String place(Map<String, Integer> now, String name) {
    Integer column = now.get(name);
    if (column != null) {
      return "$" + letters(column) + "#";
    }
    return named.contains(name) ? name(name) : name;
  }

  static String name(String constant) {
    return PREFIX + constant;
  }

  static String letters(int column) {
    String last = String.valueOf((char) ('A' + column % 26));
    return column < 26 ? last : letters(column / 26 - 1) + last;
  }

  List<Column> columns() {
    return List.copyOf(columns);
  }

  /** Column of a name's last formula. */
  int column(String name) {
    Integer column = places.get(name);
    if (column == null) {
      throw new IllegalArgumentException("name = " + name + ", not in the chain");
    }
    return column;
  }

  /** A formula in a row, counted from 1. */
  static String at(Expression formula, int row) {
    UnaryOperator<String> here = name -> name.replace("#", String.valueOf(row));
    return Language.SHEET.write(formula.renamed(here));
  }
}
