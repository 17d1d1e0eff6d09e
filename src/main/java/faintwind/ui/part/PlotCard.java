package faintwind.ui.part;

import faintwind.message.Messages;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * A plot without a frame: title (quantity and unit), a remark at the right, the drawing, and the
 * same numbers as a table in its place (Ctrl+T).
 */
public final class PlotCard extends VBox {
  private final StackPane place = new StackPane();
  private final Node drawing;
  private final Supplier<Table> numbers;

  /**
   * The numbers of a plot.
   *
   * @param heads column heads with units
   * @param rows as many cells as there are heads, already in words
   */
  public record Table(List<String> heads, List<List<String>> rows) {
    public Table {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
    }
  }

  /**
   * A card round a drawing.
   *
   * @param title quantity and unit; empty where the drawing carries it
   * @param remark small words at the right; may be empty
   * @param summary what a person who cannot see the plot is told, such as "falls from 32 K to 13 K"
   * @param numbers asked for when the table is wanted
   */
  public PlotCard(
      String title, String remark, String summary, Node drawing, Supplier<Table> numbers) {
    this.drawing = drawing;
    this.numbers = numbers;
    getStyleClass().add("plot-card");
    Label head = new Label(title);
    head.getStyleClass().add("semibold");
    Label small = new Label(remark);
    small.getStyleClass().addAll("fine", "soft");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox line = new HBox(head, gap, small);
    line.getStyleClass().add("plot-head");
    place.getChildren().add(drawing);
    VBox.setVgrow(place, Priority.ALWAYS);
    if (!title.isEmpty()) {
      getChildren().add(line); // otherwise the drawing carries its own title
    }
    getChildren().add(place);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(title + ". " + summary);
  }

  /** Adds the sentence that tells how to see the numbers as a table. */
  public PlotCard withTableHint(Messages words) {
    setAccessibleHelp(words.text("window.plot.table-hint"));
    return this;
  }

  /** Shows the table in place of the drawing, or the drawing again. */
  public void toggleTable() {
    boolean drawn = place.getChildren().contains(drawing);
    place.getChildren().setAll(drawn ? tableView(numbers.get()) : drawing);
  }

  private static Node tableView(Table table) {
    TableView<List<String>> view = new TableView<>();
    view.getStyleClass().add("plot-table");
    for (int i = 0; i < table.heads().size(); i++) {
      int column = i;
      TableColumn<List<String>, String> cells = new TableColumn<>(table.heads().get(i));
      cells.setCellValueFactory(
          row -> new javafx.beans.property.SimpleStringProperty(row.getValue().get(column)));
      cells.setSortable(false);
      view.getColumns().add(cells);
    }
    view.getItems().setAll(table.rows());
    view.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
    return view;
  }
}
