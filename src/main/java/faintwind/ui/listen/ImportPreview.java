package faintwind.ui.listen;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineForm;
import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.Understood;
import faintwind.calibration.profile.ValueUnit;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.fold.Prose;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.beans.binding.Bindings;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SearchableComboBox;
import org.controlsfx.validation.ValidationSupport;
import org.controlsfx.validation.Validator;
import org.controlsfx.validation.decoration.StyleClassValidationDecoration;

/**
 * The first lines of a foreign log, what they are said to mean, and under it what was understood:
 * anew at each change.
 */
final class ImportPreview extends VBox {
  private static final int SHOWN_LINES = 6;
  private static final int SHOWN_ROWS = 5;
  private static final List<Character> DELIMITERS = List.of(',', ';', '\t', ' ', '|');

  private final ImportModel model;
  private final Messages words;
  private final ValidationSupport marks = new ValidationSupport();
  private final VBox columns = Boxes.column("design-form");
  private final VBox understood = Boxes.column("problem-list");
  private final Button use;

  /**
   * A preview.
   *
   * @param profiles those to begin from
   * @param use takes the profile when every line is understood, or the person says so
   */
  ImportPreview(
      Messages words,
      ImportModel model,
      List<ImportProfile> profiles,
      Consumer<ImportProfile> use) {
    this.words = words;
    this.model = model;
    marks.setValidationDecorator(new StyleClassValidationDecoration("refused", "doubtful"));
    this.use =
        Words.button(
            "import-use",
            words.text("import.use"),
            () -> model.view().get().profile().ifPresent(use));
    setId("import-preview");
    getStyleClass().addAll("data-body", "import-preview");
    understood.setId("import-understood");
    getChildren()
        .addAll(
            Words.label(words.text("import.title"), "tell", "semibold"),
            raw(),
            beginFrom(profiles),
            lineChoices(),
            timeChoices(),
            columns,
            Words.link("import-add-column", words.text("import.add-column"), model::addRow),
            understood,
            Fields.text("import-name", "import.name-label", model.name(), 16, words),
            this.use);
    model.rows().addListener((ListChangeListener<ImportModel.Row>) c -> fill());
    model.view().addListener((p, was, now) -> show(now));
    fill();
    show(model.view().get());
  }

  private Node raw() {
    VBox box = new VBox();
    box.setId("import-raw");
    box.getStyleClass().add("raw-lines");
    int number = 0;
    for (String line : model.lines().subList(0, Math.min(SHOWN_LINES, model.lines().size()))) {
      number++;
      Label text = Words.label(number + "  " + line.replace("\t", " ⇥ "), "mono", "fine");
      box.getChildren().add(text);
    }
    return box;
  }

  private Node beginFrom(List<ImportProfile> profiles) {
    SearchableComboBox<ImportProfile> choice =
        new SearchableComboBox<>(FXCollections.observableArrayList(profiles));
    choice.setId("import-begin");
    choice.setMaxWidth(Region.USE_PREF_SIZE);
    choice.setConverter(Fields.shown(ImportProfile::name));
    choice.setPromptText(words.text("import.begin"));
    choice.setAccessibleText(words.text("import.begin"));
    choice.valueProperty().addListener((p, was, now) -> model.beginFrom(now));
    return choice;
  }

  private Node lineChoices() {
    return Fields.line(
        Fields.named(
            "import.delimiter-label",
            Fields.choice(
                "import-delimiter",
                DELIMITERS,
                c -> said("import.delimiter-", delimiterKey(c)),
                model.delimiter()),
            words),
        Fields.named(
            "import.mark-label",
            Fields.choice("import-mark", List.of('.', ','), String::valueOf, model.decimalMark()),
            words),
        judged(
            "import.header-label",
            Fields.field("import-header", "import.header-label", model.headerLines(), 3, words),
            ImportModel::isCount),
        Fields.text("import-missing", "import.missing-label", model.missing(), 8, words));
  }

  /** A box that is marked while its text cannot be what is asked for; why stands below all. */
  private Node judged(String key, TextField field, Predicate<String> fits) {
    marks.registerValidator(
        field, false, Validator.<String>createPredicateValidator(fits, words.text(key)));
    return Fields.named(key, field, words);
  }

  private static String delimiterKey(char delimiter) {
    return switch (delimiter) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      case '|' -> "bar";
      default -> LineForm.word(delimiter);
    };
  }

  private Node timeChoices() {
    return Fields.line(
        Fields.named(
            "import.time-label",
            Fields.choice(
                "import-time-form", List.of(TimeForm.values()), this::form, model.timeForm()),
            words),
        shownFor(
            judged(
                "import.time-column",
                Fields.field(
                    "import-time-column", "import.time-column", model.timeColumn(), 6, words),
                ImportModel::isColumn),
            form -> form != TimeForm.RECEIVED),
        shownFor(
            Fields.text("import-date-column", "import.date-column", model.dateColumn(), 6, words),
            form -> form == TimeForm.PATTERN || form == TimeForm.ISO),
        shownFor(
            judged(
                "import.pattern-label",
                Fields.field("import-pattern", "import.pattern-label", model.pattern(), 12, words),
                TimeColumn::isPattern),
            form -> form == TimeForm.PATTERN));
  }

  private Node shownFor(Node node, Predicate<TimeForm> when) {
    node.visibleProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> when.test(model.timeForm().get()), model.timeForm()));
    node.managedProperty().bind(node.visibleProperty());
    return node;
  }

  private String form(TimeForm form) {
    // the plain key belongs to the problem of a pattern that does not fit
    return form == TimeForm.PATTERN
        ? words.text("import.time-pattern-word")
        : said("import.time-", form.word());
  }

  private void fill() {
    columns.getChildren().clear();
    int number = 0;
    for (ImportModel.Row row : model.rows()) {
      number++;
      columns.getChildren().add(column(row, number));
    }
  }

  private Node column(ImportModel.Row row, int number) {
    ComboBox<ValueUnit> unit = units(row, number);
    return Boxes.row(
        "import-row",
        Fields.text("import-column-" + number, "import.column-label", row.column(), 6, words),
        Fields.named(
            "import.means-label",
            Fields.choice(
                "import-means-" + number,
                List.of(Meaning.values()),
                meaning -> said("import.means-", meaning.word()),
                row.meaning()),
            words),
        Fields.named("import.unit-label", unit, words),
        Words.link(
            "import-remove-" + number, words.text("import.remove"), () -> model.removeRow(row)));
  }

  /** Units of the row's meaning; while they are exchanged the box stands empty for a moment. */
  private ComboBox<ValueUnit> units(ImportModel.Row row, int number) {
    ComboBox<ValueUnit> combo = new FoldingChoice<>();
    combo.setId("import-unit-" + number);
    combo.setConverter(Fields.shown(this::unit));
    combo.getItems().setAll(ImportModel.units(row.meaning().get()));
    combo.setValue(row.unit().get());
    combo.setOnAction(
        event -> {
          if (combo.getValue() != null) {
            row.unit().set(combo.getValue());
          }
        });
    row.unit()
        .addListener(
            (p, was, now) -> {
              combo.getItems().setAll(ImportModel.units(row.meaning().get()));
              combo.setValue(now);
            });
    return combo;
  }

  private String unit(ValueUnit unit) {
    return said("import.unit-", unit.word());
  }

  private void show(ImportModel.View now) {
    understood.getChildren().clear();
    now.understood().filter(u -> !u.rows().isEmpty()).map(this::table).ifPresent(this::add);
    understood.getChildren().addAll(Rows.problems(now.problems(), !now.fits(), words));
    if (now.fits()) {
      add(Rows.soft(words.text("import.fits", now.understood().orElseThrow().rows().size())));
    }
    use.setDisable(now.understood().filter(u -> !u.rows().isEmpty()).isEmpty());
  }

  private void add(Node node) {
    understood.getChildren().add(node);
  }

  private Node table(Understood all) {
    GridPane table = new GridPane();
    table.setId("import-table");
    table.getStyleClass().add("fact-table");
    List<String> heads = new ArrayList<>(List.of(words.text("import.line-head")));
    heads.addAll(all.columns());
    for (int i = 0; i < heads.size(); i++) {
      Label head = Words.label(heads.get(i), "column-head");
      table.add(head, i, 0);
    }
    int shown = Math.min(SHOWN_ROWS, all.rows().size());
    for (int r = 0; r < shown; r++) {
      Understood.Row row = all.rows().get(r);
      table.add(new Prose(String.valueOf(row.line())), 0, r + 1);
      for (int c = 0; c < row.cells().size(); c++) {
        table.add(new Prose(cell(row.cells().get(c), c == 0)), c + 1, r + 1);
      }
    }
    return table;
  }

  private String cell(OptionalDouble value, boolean time) {
    if (value.isPresent()) {
      return AmountText.number(value.getAsDouble(), 9, words.locale());
    }
    return time ? words.text("import.arrival") : "–";
  }

  private String said(String key, String word) {
    return words.text(key + word);
  }
}
