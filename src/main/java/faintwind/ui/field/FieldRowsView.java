package faintwind.ui.field;

import faintwind.job.field.FieldRows;
import faintwind.message.Numerals;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Words;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.FXCollections;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;

/** The rows of a stretch with their clock times, as they are in the speeds file. */
final class FieldRowsView extends VBox {
  private static final double HEIGHT_EM = 22;
  private static final double LEAST_EM = 14;
  private static final double BASE_FONT_PX = 15;

  private final Desk desk;
  private final LogTime time;

  /** One row of one log. */
  private record Row(FieldWords log, int at) {
    private FieldRows rows() {
      return log.look().rows();
    }

    private double time_s() {
      return rows().time_s(at);
    }
  }

  /** Where a log's rows of the stretch are. */
  private record Part(FieldWords log, int from, int to) {}

  FieldRowsView(Desk desk, LogTime time, List<FieldWords> logs, double from, double to) {
    this.desk = desk;
    this.time = time;
    List<Part> parts = logs.stream().map(log -> part(log, from, to)).toList();
    List<Row> rows = new Rows(parts);
    TableView<Row> table = new TableView<>(FXCollections.observableList(rows));
    table.setId("field-rows");
    table.getStyleClass().add("plot-table");
    table.setStyle("-fx-pref-height: " + HEIGHT_EM + "em; -fx-min-height: " + LEAST_EM + "em;");
    FieldWords first = logs.get(0);
    addNamed(
        table,
        desk.text("field.rows.time", time.zone()).strip(),
        new Column(10.5, row -> time.row(row.log().look(), row.time_s())));
    add(table, "field.rows.speed", new Column(6.3, row -> speed(row.rows().speed_m_s(row.at()))));
    add(table, "field.rows.u95", new Column(5.5, row -> speed(row.rows().u95_m_s(row.at()))));
    addNamed(
        table,
        first.look().signal(),
        new Column(5, row -> Numerals.compact(row.rows().signal(row.at()), 5)));
    add(table, "field.rows.flags", new Column(8.5, row -> row.log().flagsAt(row.time_s())));
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
    getStyleClass().add("data-body");
    String count = Numerals.grouped(rows.size());
    getChildren().setAll(Words.label(desk.text("field.rows.count", count), "fine", "soft"), table);
  }

  private Part part(FieldWords log, double from, double to) {
    FieldRows rows = log.look().rows();
    int first = 0;
    while (first < rows.size() && time.at(log.look(), rows.time_s(first)) < from) {
      first++;
    }
    int end = first;
    while (end < rows.size() && time.at(log.look(), rows.time_s(end)) <= to) {
      end++;
    }
    return new Part(log, first, end);
  }

  private void add(TableView<Row> table, String key, Column column) {
    addNamed(table, desk.text(key), column);
  }

  /** How wide a column is at least, so that no number and no head is cut, and what it says. */
  private record Column(double width_em, Function<Row, String> cell) {}

  private void addNamed(TableView<Row> table, String name, Column how) {
    TableColumn<Row, String> column = new TableColumn<>(name);
    column.setMinWidth(how.width_em() * BASE_FONT_PX * desk.look().textPct().get() / 100);
    column.setCellValueFactory(row -> new SimpleStringProperty(how.cell().apply(row.getValue())));
    column.setSortable(false);
    table.getColumns().add(column);
  }

  private static String speed(double speed_m_s) {
    return Numerals.places(speed_m_s, 3);
  }

  /** A long record is not copied: the table asks for the rows that it shows. */
  private static final class Rows extends AbstractList<Row> {
    private final List<Part> parts;

    private Rows(List<Part> parts) {
      this.parts = new ArrayList<>(parts);
    }

    @Override
    public Row get(int index) {
      int left = index;
      for (Part part : parts) {
        int size = part.to() - part.from();
        if (left < size) {
          return new Row(part.log(), part.from() + left);
        }
        left -= size;
      }
      throw new IndexOutOfBoundsException(index);
    }

    @Override
    public int size() {
      return parts.stream().mapToInt(part -> part.to() - part.from()).sum();
    }
  }
}
