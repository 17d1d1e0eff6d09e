package faintwind.ui.air;

import faintwind.ui.air.Readings.Way;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.NumberField;
import faintwind.ui.part.NumberModel;
import faintwind.ui.part.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A row for each place with the boxes of what was read there, and the choice of where from. */
final class ReadingsView extends VBox {
  private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  private final Desk desk;
  private final PlacesModel<?> list;
  private final Function<PlaceRow, Node> name;
  private final Map<PlaceRow, StackPane> marks = new HashMap<>();
  private final VBox rows = Boxes.column("typed-runs");
  private final VBox from = Boxes.column("data-body");

  /**
   * A view.
   *
   * @param name shows or asks what a place is called
   */
  ReadingsView(Desk desk, PlacesModel<?> list, Function<PlaceRow, Node> name) {
    this.desk = desk;
    this.list = list;
    this.name = name;
    setId("air-readings");
    getStyleClass().add("data-body");
    rows.setId("air-rows");
    getChildren().setAll(ways(), from, rows);
    fill();
  }

  private Node ways() {
    HBox ways = Boxes.row("ways");
    for (Way way : Way.values()) {
      String word = way == Way.LOG ? "log" : "typed";
      Hyperlink link =
          Words.link("air-way-" + word, desk.text("air.way." + word), () -> choose(way));
      link.getStyleClass().add("page-link");
      ways.getChildren().add(link);
    }
    return ways;
  }

  private void choose(Way way) {
    list.readings().way().set(way);
    if (way == Way.LOG && list.readings().log().isEmpty()) {
      list.ways().lastLog().ifPresent(log -> list.use(log.speeds()));
    }
    fill();
  }

  /** Lays the rows out anew: places came or went, or the boxes are others. */
  void fill() {
    boolean byLog = list.readings().isByLog();
    for (Way way : Way.values()) {
      Node link = lookup("#air-way-" + (way == Way.LOG ? "log" : "typed"));
      if (link != null) {
        link.pseudoClassStateChanged(HERE, way == list.readings().way().get());
      }
    }
    rows.getChildren().clear();
    marks.clear();
    list.readings().rows().forEach(row -> rows.getChildren().add(line(row, byLog)));
    refresh();
  }

  /** Says which log it is, and marks what is filled in. */
  void refresh() {
    boolean byLog = list.readings().isByLog();
    marks.forEach((row, mark) -> mark.getChildren().setAll(mark(row, byLog)));
    Boxes.present(from, byLog);
    from.getChildren().clear();
    if (byLog) {
      String file =
          list.readings().log().map(log -> String.valueOf(log.speeds().getFileName())).orElse("");
      String said = file.isEmpty() ? desk.text("air.log.none") : desk.text("air.log", file);
      from.getChildren()
          .setAll(
              Words.label(said),
              Words.link("air-log-choose", desk.text("air.log.choose"), this::askLog));
    }
  }

  private void askLog() {
    desk.files()
        .open(desk.text("air.log.choose"), desk.text("air.log.kind"), "*.csv")
        .ifPresent(list::use);
  }

  private Node line(PlaceRow row, boolean byLog) {
    int number = list.readings().rows().indexOf(row) + 1;
    StackPane mark = new StackPane();
    marks.put(row, mark);
    HBox line = Boxes.row("typed-run row", mark, name.apply(row));
    List<String> names = byLog ? List.of("from", "to") : List.of("speed", "u95");
    List<NumberModel> numbers = row.numbers(byLog);
    for (int i = 0; i < names.size(); i++) {
      NumberModel model = numbers.get(i);
      String about = desk.text("air.column." + names.get(i));
      NumberField field =
          new NumberField(
              "air-" + number + "-" + names.get(i), row.name().get() + ", " + about, model);
      Label head = Words.label(about, "column-head");
      line.getChildren().add(Boxes.column("typed-field air-field", head, field));
    }
    return line;
  }

  private Node mark(PlaceRow row, boolean byLog) {
    Mark mark = row.isFilled(byLog) ? Mark.DONE : Mark.READY;
    return new MarkShape(mark, desk.text(mark.key()));
  }
}
