package faintwind.ui.part;

import faintwind.message.Messages;
import faintwind.ui.fold.Prose;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A plot without a frame: title (quantity and unit), a remark at the right, the drawing, and the
 * same numbers as a table in its place (Ctrl+T). With the focus on it, Shift and the arrow keys
 * move a reading cursor whose place is shown and spoken; Esc or leaving takes it away.
 */
public final class PlotCard extends VBox {
  private final StackPane place = new StackPane();
  private final Node drawing;
  private final Supplier<Table> numbers;
  private final Label reading = new Prose();
  private String summary = "";

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
    Label head = Words.label(title, "semibold");
    Label small = Words.label(remark, "fine", "soft");
    Region gap = Boxes.gap();
    HBox line = Boxes.row("plot-head", head, gap, small);
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

  /** What a reading cursor does with the drawing. */
  public interface Reader {

    /** Moves by a key and says what stands there; empty for a key that moves nothing. */
    Optional<String> moved(KeyCode key);

    /** Takes the cursor away. */
    void gone();
  }

  /** Lets the plot be read by Shift and the arrow keys, Home and End. */
  public PlotCard withReader(Reader reader) {
    reading.setId("plot-reading");
    reading.getStyleClass().addAll("fine", "semibold");
    reading.setWrapText(true);
    addEventHandler(KeyEvent.KEY_PRESSED, event -> read(reader, event));
    focusedProperty().addListener((property, was, now) -> stopReading(reader));
    return this;
  }

  private void read(Reader reader, KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE && getChildren().contains(reading)) {
      stopReading(reader);
      event.consume();
    } else if (event.isShiftDown() && place.getChildren().contains(drawing)) {
      reader
          .moved(event.getCode())
          .ifPresent(
              words -> {
                say(words);
                event.consume();
              });
    }
  }

  /** Shows and speaks what is read or seen now. */
  public void readOut(String words) {
    say(words);
  }

  private void say(String words) {
    if (!getChildren().contains(reading)) {
      summary = getAccessibleText();
      getChildren().add(0, reading); // at the head: the foot of a tall plot may be out of sight
    }
    reading.setText(words);
    setAccessibleText(words);
  }

  private void stopReading(Reader reader) {
    if (getChildren().remove(reading)) {
      setAccessibleText(summary);
      reader.gone();
    }
  }

  /** Shows the table in place of the drawing, or the drawing again. */
  public void toggleTable() {
    boolean drawn = place.getChildren().contains(drawing);
    place.getChildren().setAll(drawn ? table(numbers.get()) : drawing);
  }

  /** A cell of a table in as many lines as it needs. */
  private static final class WrappingCell extends TableCell<List<String>, String> {
    WrappingCell() {
      setWrapText(true);
    }

    @Override
    protected void updateItem(@Nullable String words, boolean empty) {
      super.updateItem(words, empty);
      setText(empty ? null : words);
    }
  }

  /** A table on its own. */
  public static TableView<List<String>> table(Table table) {
    TableView<List<String>> view = new TableView<>();
    view.getStyleClass().add("plot-table");
    for (int i = 0; i < table.heads().size(); i++) {
      int column = i;
      TableColumn<List<String>, String> cells = new TableColumn<>();
      cells.setGraphic(Words.label(table.heads().get(i)));
      cells.setCellFactory(made -> new WrappingCell());
      cells.setCellValueFactory(row -> new SimpleStringProperty(row.getValue().get(column)));
      cells.setSortable(false);
      view.getColumns().add(cells);
    }
    view.getItems().setAll(table.rows());
    view.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
    return view;
  }
}
