package faintwind.report.export;

import faintwind.calibration.response.Relation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The live filter as columns of a sheet, laid out from its template ({@code
 * assets/export/faintwind_sheet.txt}, which says how it is written).
 */
final class FilterColumns {
  private static final Pattern REFERENCE =
      Pattern.compile("\\[([\\w.]+)(-{1,2}|<|\\*|@\\d+)?]|(?<=[A-Z])#");
  private static final Pattern LINE = Pattern.compile("(raw |keep )?([\\w.]+) = (.+)");
  private static final Pattern CHAIN = Pattern.compile("chain (\\w+) (\\w+) as (\\w+): (.+)");

  /**
   * A column.
   *
   * @param name heading
   * @param formula with the names of other columns in brackets
   * @param strength number of its strength, from 1; 0 where it is for all of them
   */
  private record Column(String name, String formula, int strength) {}

  private final Map<String, List<Relation>> chains;
  private final Function<String, String> constant;
  private final List<Double> strengths;
  private final int firstRow;
  private final List<Column> columns = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();
  private boolean eachStrength;

  /**
   * Lays the columns out.
   *
   * @param template the template's lines
   * @param chains the calibration's formulas by the name of their chain
   * @param constant how the workbook writes a named number
   * @param strengths of the random walks
   * @param firstRow row of the first reading, counted from 1
   */
  FilterColumns(
      List<String> template,
      Map<String, List<Relation>> chains,
      Function<String, String> constant,
      List<Double> strengths,
      int firstRow) {
    this.chains = Map.copyOf(chains);
    this.constant = constant;
    this.strengths = List.copyOf(strengths);
    this.firstRow = firstRow;
    List<String> block = new ArrayList<>();
    for (String line : template) {
      boolean turn = line.equals("strengths") || line.equals("together");
      if (turn) {
        lay(block);
        block.clear();
        eachStrength = line.equals("strengths");
      } else if (!line.isBlank() && !line.startsWith("#")) {
        block.add(line);
      }
    }
    lay(block);
  }

  private void lay(List<String> block) {
    int from = eachStrength ? 1 : 0;
    int to = eachStrength ? strengths.size() : 0;
    for (int strength = from; strength <= to; strength++) {
      for (String line : block) {
        lay(line, strength);
      }
    }
  }

  private void lay(String line, int strength) {
    Matcher chain = CHAIN.matcher(line);
    Matcher column = LINE.matcher(line);
    if (chain.matches()) {
      layChain(chain);
    } else if (column.matches()) {
      String name = column.group(2);
      String formula = column.group(3);
      String word = column.group(1) == null ? "" : column.group(1).strip();
      add(name, wrapped(word, name, formula, strength), strength);
    } else {
      throw new IllegalArgumentException("line = " + line + ", neither column nor chain");
    }
  }

  private static String wrapped(String word, String name, String formula, int strength) {
    return switch (word) {
      case "raw" -> formula;
      case "keep" -> "IF([use]," + formula + ",[" + name + "-])";
      default -> "IF([" + (strength > 0 ? "go" : "use") + "]," + formula + ",\"\")";
    };
  }

  private void add(String name, String formula, int strength) {
    places.put(key(name, strength), columns.size());
    columns.add(new Column(name, formula, strength));
  }

  private static String key(String name, int strength) {
    return name + " " + strength;
  }

  private void layChain(Matcher chain) {
    Map<String, String> given = new LinkedHashMap<>();
    Map<String, Double> known = new HashMap<>();
    for (String input : chain.group(4).split(", ", -1)) {
      String[] parts = input.split("=", 2);
      given.put(parts[0], parts[1]);
      if (!parts[1].startsWith("[")) {
        known.put(parts[0], Double.valueOf(parts[1]));
      }
    }
    List<Relation> relations = chains.getOrDefault(chain.group(1), List.of());
    ChainCode code = ChainCode.of(relations, List.copyOf(given.keySet()), chain.group(2), known);
    for (ChainCode.Line line : code.lines()) {
      String name = chain.group(3) + "." + line.name();
      line.start().ifPresent(start -> add(name, use(start, chain.group(3), given), 0));
      for (int i = 0; i < (line.start().isPresent() ? SheetChain.ROUNDS : 1); i++) {
        add(name, use(line.formula(), chain.group(3), given), 0);
      }
    }
  }

  /** A formula of a chain; a name is an input, a column above, or a number of the workbook. */
  private String use(Expression formula, String prefix, Map<String, String> given) {
    Expression placed =
        formula.renamed(
            name -> {
              Integer place = places.get(key(prefix + "." + name, 0));
              String column = given.get(name);
              return column != null
                  ? column
                  : place == null ? constant.apply(name) : SheetChain.letters(place) + "#";
            });
    return "IF([use]," + Language.SHEET.write(placed) + ",\"\")";
  }

  /** Headings, with the number of the strength where there is one. */
  List<String> headings() {
    return columns.stream()
        .map(column -> column.name() + (column.strength() > 0 ? " " + column.strength() : ""))
        .toList();
  }

  /** Letters of a column that is for all strengths. */
  String letters(String name) {
    return SheetChain.letters(place(name, 0));
  }

  /** The formulas of a row, counted from 1. */
  List<String> row(int row) {
    return columns.stream().map(column -> at(column, row)).toList();
  }

  private String at(Column column, int row) {
    return REFERENCE.matcher(column.formula()).replaceAll(match -> reference(match, column, row));
  }

  private String reference(MatchResult match, Column column, int row) {
    String name = match.group(1);
    String mark = match.group(2) == null ? "" : match.group(2);
    if (name == null) {
      return String.valueOf(row);
    }
    if (name.equals("strength") || name.equals("number")) {
      int number = column.strength();
      return name.equals("number") ? "" + number : String.valueOf(strengths.get(number - 1));
    }
    if (mark.equals("*")) {
      return IntStream.rangeClosed(1, strengths.size())
          .mapToObj(strength -> SheetChain.letters(place(name, strength)) + row)
          .collect(Collectors.joining(","));
    }
    if (mark.startsWith("@")) {
      String letters = SheetChain.letters(place(name, column.strength()));
      int from = Math.max(firstRow, row - Integer.parseInt(mark.substring(1)));
      return letters + from + ":" + letters + row;
    }
    boolean before = mark.equals("<");
    int strength = column.strength() == 0 && before ? strengths.size() + 1 : column.strength();
    int place = place(name, before ? strength - 1 : strength);
    return SheetChain.letters(place) + (before ? row : row - mark.length());
  }

  /** A column of a strength, or that for all of them. */
  private int place(String name, int strength) {
    Integer own = places.get(key(name, strength));
    Integer place = own == null ? places.get(key(name, 0)) : own;
    if (place == null) {
      throw new IllegalArgumentException("name = " + name + ", no such column");
    }
    return place;
  }
}
