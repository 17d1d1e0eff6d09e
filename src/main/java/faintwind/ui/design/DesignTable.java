package faintwind.ui.design;

import faintwind.ui.fold.FoldingTable;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** Designs beside one another: one row a number, one column a design. */
final class DesignTable {
  private DesignTable() {}

  /**
   * A table.
   *
   * @param id stable id
   * @param heads one name a design
   * @param rows what, then its value for each design
   */
  static FoldingTable of(String id, List<String> heads, List<List<String>> rows) {
    FoldingTable table = new FoldingTable(id, "side-by-side");
    List<Node> names = new ArrayList<>(List.of(Words.label("", "fine")));
    heads.forEach(head -> names.add(Words.label(head, "fine", "bold", "side-head")));
    table.row(names);
    for (List<String> row : rows) {
      List<Node> cells = new ArrayList<>(List.of(Words.label(row.get(0), "fine", "soft")));
      row.subList(1, row.size()).forEach(value -> cells.add(value(value)));
      table.row(cells);
    }
    return table;
  }

  private static Label value(String text) {
    return Words.label(text, "side-value");
  }
}
