package faintwind.job.bench;

import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What designs differ in: a column a design that is unlike the others, with all who have it; where
 * these are too many for columns, who has which value.
 *
 * @param heads of the columns
 * @param rows a quantity each; none where the designs are the same
 */
public record ComparedDesigns(List<String> heads, List<List<String>> rows) {
  private static final int COLUMNS = 4;
  private static final int NAMED = 3;
  private static final String NOTHING = "–";

  public ComparedDesigns {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  static ComparedDesigns of(List<String> names, List<DesignSheet> sheets, Messages words) {
    Map<String, List<String>> cells = new LinkedHashMap<>();
    for (DesignSheet sheet : sheets) {
      sheet.quantities().forEach(o -> cells.put("quantity." + o.id().id(), new ArrayList<>()));
    }
    for (DesignSheet sheet : sheets) {
      Map<String, String> own =
          sheet.quantities().stream()
              .collect(Collectors.toMap(o -> "quantity." + o.id().id(), ComparedDesigns::cell));
      cells.forEach((key, column) -> column.add(own.getOrDefault(key, NOTHING)));
    }
    cells.values().removeIf(column -> column.stream().distinct().count() < 2);
    Map<List<String>, List<Integer>> alike = new LinkedHashMap<>();
    for (int i = 0; i < sheets.size(); i++) {
      int at = i;
      List<String> design = cells.values().stream().map(column -> column.get(at)).toList();
      alike.computeIfAbsent(design, d -> new ArrayList<>()).add(i);
    }
    List<String> heads = new ArrayList<>(List.of(words.text("build-log.quantity")));
    List<List<String>> rows = new ArrayList<>();
    boolean inColumns = alike.size() <= COLUMNS;
    if (inColumns) {
      alike.values().forEach(who -> heads.add(who(who.stream().map(names::get).toList(), words)));
    } else {
      heads.add(words.text("bench-compare.who"));
    }
    cells.forEach(
        (key, column) -> {
          List<String> row = new ArrayList<>(List.of(words.text(key)));
          if (inColumns) {
            alike.values().forEach(who -> row.add(column.get(who.get(0))));
          } else {
            row.add(values(names, column, words));
          }
          rows.add(row);
        });
    return new ComparedDesigns(heads, rows);
  }

  private static String cell(Outcome outcome) {
    String value = Numerals.compact(outcome.value().nominal(), 3);
    return (value + " " + outcome.id().unit()).strip();
  }

  /** Each value with those who have it, the most frequent one first. */
  private static String values(List<String> names, List<String> column, Messages words) {
    Map<String, List<String>> byValue = new LinkedHashMap<>();
    for (int i = 0; i < column.size(); i++) {
      byValue.computeIfAbsent(column.get(i), value -> new ArrayList<>()).add(names.get(i));
    }
    return byValue.entrySet().stream()
        .sorted(Comparator.comparing(e -> -e.getValue().size()))
        .map(e -> words.text("bench-compare.value", e.getKey(), who(e.getValue(), words)))
        .collect(Collectors.joining("; "));
  }

  private static String who(List<String> names, Messages words) {
    String first = names.stream().limit(NAMED).collect(Collectors.joining("; "));
    return names.size() <= NAMED
        ? first
        : words.text("bench-compare.more", first, names.size() - NAMED);
  }
}
