package faintwind.ui.lesson;

import faintwind.guide.lesson.Repeat;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.Arrays;
import java.util.Locale;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** The lessons of the form: many at once, then a row each. */
final class NewLessonsView extends VBox {
  private final Desk desk;
  private final NewClassModel model;
  private final NewLessons lessons;
  private final VBox rows = Boxes.column("class-new-rows");
  private final Button add;

  NewLessonsView(Desk desk, NewClassModel model) {
    this.desk = desk;
    this.model = model;
    lessons = model.form().lessons();
    add = Words.button("class-new-add", desk.text("class.new.add"), model::addLessons);
    rows.setId("class-new-lessons");
    getStyleClass().add("typed-box");
    getChildren()
        .addAll(
            Words.label(desk.text("class.new.lessons"), "tell", "semibold"),
            Rows.soft(desk.text("class.new.lessons-why")),
            many(),
            add,
            rows);
    add.getStyleClass().add("quiet");
    lessons.rows().addListener((ListChangeListener<NewLessons.Row>) change -> fill());
    fill();
  }

  private Node many() {
    TextField first = TypedField.day("class-new-first");
    first.setPromptText(desk.text("class.new.first-example"));
    ComboBox<Repeat> repeat =
        Fields.choice(
            "class-new-repeat",
            Arrays.asList(Repeat.values()),
            each -> desk.text("class.new.repeat." + each.name().toLowerCase(Locale.ROOT)),
            lessons.repeat());
    repeat.setAccessibleText(desk.text("class.new.repeat"));
    Node named =
        Boxes.column("typed-box", Words.label(desk.text("class.new.repeat"), "semibold"), repeat);
    return Boxes.row(
        "class-new-many",
        field("class.new.first", first, lessons.first()).optional(),
        field("class.new.minutes", TypedField.counted("class-new-minutes"), lessons.minutes()),
        field("class.new.count", TypedField.counted("class-new-count"), lessons.count()),
        named);
  }

  private TypedField field(String key, TextField field, TypedBox box) {
    field.setOnAction(event -> model.addLessons());
    return new TypedField(desk.text(key), field, box, () -> model.leave(box));
  }

  private void fill() {
    rows.getChildren().clear();
    for (int i = 0; i < lessons.rows().size(); i++) {
      rows.getChildren().add(row(i + 1, lessons.rows().get(i)));
    }
  }

  private Node row(int number, NewLessons.Row row) {
    String id = "class-new-lesson-" + number;
    TextField at = TypedField.day(id);
    TextField minutes = TypedField.counted(id + "-minutes");
    String begins = desk.text("class.new.lesson", number);
    TypedField.bind(at, begins, row.at(), model::leaveLessons);
    String last = desk.text("class.new.lesson-minutes", number);
    TypedField.bind(minutes, last, row.minutes(), model::leaveLessons);
    Hyperlink out =
        Words.link(id + "-out", desk.text("class.new.lesson-out"), () -> remove(number, row));
    out.setAccessibleText(desk.text("class.new.lesson-out-said", number));
    return Boxes.column(
        "typed-box",
        Boxes.row(
            "class-new-lesson",
            Words.whole(begins),
            at,
            Words.whole(desk.text("class.new.minutes")),
            minutes,
            out),
        TypedField.said(at, row.at().said()),
        TypedField.said(minutes, row.minutes().said()));
  }

  /** The next one can be taken out at once by the keyboard. */
  private void remove(int number, NewLessons.Row row) {
    model.removeLesson(row);
    int left = lessons.rows().size();
    Node next =
        left == 0 ? add : rows.lookup("#class-new-lesson-" + Math.min(number, left) + "-out");
    if (next != null) {
      next.requestFocus();
    }
  }
}
