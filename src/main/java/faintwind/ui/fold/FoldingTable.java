package faintwind.ui.fold;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/**
 * A table whose first column names its rows. Where the columns do not fit beside one another, the
 * name moves above the values of its row.
 */
public class FoldingTable extends GridPane {
  private final List<List<Node>> rows = new ArrayList<>();
  private boolean stacked;

  public FoldingTable(String id, String styles) {
    setId(id);
    getStyleClass().addAll(styles.split(" "));
    setMinHeight(USE_PREF_SIZE);
  }

  /** Adds a row; its first cell names it. */
  public void row(List<? extends Node> cells) {
    rows.add(List.copyOf(cells));
    getChildren().addAll(cells);
    for (int i = 1; i < cells.size(); i++) {
      GridPane.setHalignment(cells.get(i), HPos.RIGHT);
    }
    place();
  }

  private int values() {
    return rows.stream().mapToInt(List::size).max().orElse(1) - 1;
  }

  private void place() {
    int first = stacked ? 0 : 1;
    for (int r = 0; r < rows.size(); r++) {
      List<Node> cells = rows.get(r);
      GridPane.setConstraints(cells.get(0), 0, stacked ? 2 * r : r, stacked ? values() : 1, 1);
      for (int i = 1; i < cells.size(); i++) {
        GridPane.setConstraints(cells.get(i), first + i - 1, stacked ? 2 * r + 1 : r);
      }
    }
    List<ColumnConstraints> columns = new ArrayList<>();
    for (int i = 0; i < values() + first; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setHgrow(i == 0 && !stacked ? Priority.ALWAYS : Priority.SOMETIMES);
      columns.add(column);
    }
    getColumnConstraints().setAll(columns);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** What its columns need beside one another, with or without the names. */
  private double need(boolean withNames) {
    double sum = 0;
    for (int i = withNames ? 0 : 1; i <= values(); i++) {
      double most = 0;
      for (List<Node> cells : rows) {
        most = Math.max(most, i < cells.size() ? cells.get(i).minWidth(-1) : 0);
      }
      sum += snapSizeX(most);
    }
    return sum
        + snapSpaceX(getHgap()) * (values() - (withNames ? 0 : 1))
        + snappedLeftInset()
        + snappedRightInset();
  }

  @Override
  protected double computeMinWidth(double height) {
    double name = rows.stream().mapToDouble(r -> r.get(0).minWidth(-1)).max().orElse(0);
    return Math.max(need(false), name + snappedLeftInset() + snappedRightInset());
  }

  @Override
  protected double computePrefHeight(double width) {
    fold(width);
    return super.computePrefHeight(width);
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    fold(getWidth());
    super.layoutChildren();
  }

  private void fold(double width) {
    boolean tight = width > 0 && need(true) > width + 0.5;
    if (tight != stacked) {
      stacked = tight;
      place();
    }
  }
}
