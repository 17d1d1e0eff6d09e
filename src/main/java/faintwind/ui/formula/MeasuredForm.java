package faintwind.ui.formula;

import faintwind.calibration.Measured.By;
import faintwind.job.formula.MeasuredKnown;
import faintwind.job.formula.MeasuredWhen;
import faintwind.job.formula.TypedDay;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/**
 * Asks when and with what runs were measured: the day where the recordings do not say it, and who,
 * where and with what as far as the record does not know it. Nothing has to be said.
 */
final class MeasuredForm extends VBox {
  private final Desk desk;
  private final MeasuredKnown known;
  private final Consumer<MeasuredWhen> said;
  private final Map<By, TextField> fields = new EnumMap<>(By.class);
  private final TextField day = new TextField();
  private final Label understood = Words.label("", "fine", "soft");

  MeasuredForm(Desk desk, MeasuredKnown known, Consumer<MeasuredWhen> said) {
    this.desk = desk;
    this.known = known;
    this.said = said;
    setId("measured-form");
    getStyleClass().add("fact-block");
    getChildren().add(Words.label(desk.text("measured.title"), "tell", "semibold"));
    getChildren().add(when());
    GridPane grid = new GridPane();
    grid.getStyleClass().add("fact-table");
    int row = 0;
    if (known.dated().isEmpty()) {
      grid.addRow(row++, name("measured.day"), new VBox(day(), understood));
    }
    for (By by : By.values()) {
      grid.addRow(row++, name("measured." + by.word()), field(by));
    }
    getChildren().add(grid);
    judge();
  }

  private Label when() {
    return Rows.soft(
        known
            .dated()
            .map(
                dated ->
                    desk.text(
                        "measured.dated",
                        DateText.zoned(desk.words(), dated.first()),
                        DateText.zoned(desk.words(), dated.last())))
            .orElse(desk.text("measured.undated")));
  }

  private Label name(String key) {
    return Words.label(desk.text(key), "semibold");
  }

  private TextField day() {
    day.setId("measured-day");
    day.setPromptText(desk.text("measured.day.prompt"));
    day.setAccessibleText(desk.text("measured.day"));
    day.textProperty().addListener((property, was, now) -> judge());
    return day;
  }

  private TextField field(By by) {
    TextField field = new TextField();
    field.setId("measured-" + by.word());
    field.setPromptText(known.by().getOrDefault(by, ""));
    field.setAccessibleText(desk.text("measured." + by.word()));
    field.setPrefColumnCount(24);
    field.textProperty().addListener((property, was, now) -> judge());
    fields.put(by, field);
    return field;
  }

  private void judge() {
    Map<By, String> by = new EnumMap<>(By.class);
    fields.forEach(
        (which, field) -> {
          if (!field.getText().isBlank()) {
            by.put(which, field.getText().strip());
          }
        });
    said.accept(new MeasuredWhen(typedDay(), by));
  }

  private Optional<OffsetDateTime> typedDay() {
    if (day.getText().isBlank()) {
      understood.setText(desk.text("measured.day.none"));
      return Optional.empty();
    }
    Checked<OffsetDateTime> read = TypedDay.read(day.getText(), ZonedDateTime.now(desk.clock()));
    understood.setText(
        read.fold(
            (at, notes) -> desk.text("measured.day.understood", DateText.zoned(desk.words(), at)),
            problems -> desk.words().sentence(problems.get(0))));
    return read.fold((at, notes) -> Optional.of(at), problems -> Optional.empty());
  }
}
