package faintwind.ui.design;

import faintwind.ui.part.Words;
import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** A table of a few designs: what in the first column, one column a design. */
final class DesignTable {
  private DesignTable() {}

  /**
   * A table.
   *
   * @param id stable id
   * @param heads one name a design
   * @param rows what, then its value for each design
   */
  static GridPane of(String id, List<String> heads, List<List<String>> rows) {
    GridPane grid = new GridPane();
    grid.setId(id);
    grid.getStyleClass().add("side-by-side");
    ColumnConstraints names = new ColumnConstraints();
    names.setHgrow(Priority.ALWAYS);
    names.setMinWidth(0);
    grid.getColumnConstraints().add(names);
    for (int k = 0; k < heads.size(); k++) {
      ColumnConstraints values = new ColumnConstraints();
      values.setHgrow(Priority.SOMETIMES);
      grid.getColumnConstraints().add(values);
      add(grid, Words.label(heads.get(k), "fine", "bold", "side-head"), k + 1, 0);
    }
    for (int i = 0; i < rows.size(); i++) {
      add(grid, Words.label(rows.get(i).get(0), "fine", "soft", "side-name"), 0, i + 1);
      for (int k = 1; k < rows.get(i).size(); k++) {
        Label cell = new Label(rows.get(i).get(k));
        cell.setMinWidth(Region.USE_PREF_SIZE);
        add(grid, cell, k, i + 1);
      }
    }
    return grid;
  }

  private static void add(GridPane grid, Node cell, int column, int row) {
    grid.add(cell, column, row);
    GridPane.setHalignment(cell, column == 0 ? HPos.LEFT : HPos.RIGHT);
  }
}
