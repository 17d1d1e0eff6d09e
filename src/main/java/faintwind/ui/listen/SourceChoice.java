package faintwind.ui.listen;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineReader;
import faintwind.job.live.SourceLook;
import faintwind.ui.fold.FoldingChoice;
import faintwind.ui.frame.Desk;
import faintwind.ui.listen.SourceChoiceModel.Kind;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SearchableComboBox;

/** Which source is listened to, what its lines mean, and a look at them. */
final class SourceChoice extends VBox {
  private final Desk desk;
  private final SourceChoiceModel model;
  private final Consumer<ImportProfile> keep;
  private final ComboBox<Optional<ImportProfile>> meaning = new SearchableComboBox<>();
  private final VBox seen = Boxes.column("problem-list");

  /**
   * A choice.
   *
   * @param keep keeps a profile that was put together here
   */
  SourceChoice(Desk desk, SourceChoiceModel model, Consumer<ImportProfile> keep) {
    this.desk = desk;
    this.model = model;
    this.keep = keep;
    setId("source-choice");
    getStyleClass().add("data-body");
    getChildren().addAll(place(), lines(), seen);
    model.seen().addListener((p, was, now) -> show(now));
    show(model.seen().get());
  }

  private Node place() {
    ComboBox<Kind> kind =
        Fields.choice(
            "source-kind", model.kinds(), k -> said("listen.kind-", k.word()), model.kind());
    ComboBox<String> port = new ComboBox<>();
    port.setId("source-port");
    port.setEditable(true);
    port.getItems().setAll(SourceLook.serialPorts());
    port.getEditor().textProperty().bindBidirectional(model.port());
    if (model.port().get().isEmpty() && !port.getItems().isEmpty()) {
      port.setValue(port.getItems().get(0));
    }
    return Fields.line(
        named("listen.kind", kind),
        shownFor(named("listen.port", port), k -> k == Kind.SERIAL),
        shownFor(field("source-baud", "listen.baud", 5), k -> k == Kind.SERIAL),
        shownFor(field("source-host", "listen.host", 12), k -> k == Kind.TCP),
        shownFor(field("source-here", "listen.here", 10), k -> k == Kind.UDP),
        shownFor(field("source-number", "listen.number", 4), k -> k == Kind.TCP || k == Kind.UDP),
        shownFor(field("source-file", "listen.file", 20), k -> k == Kind.FILE),
        shownFor(
            Words.link("source-file-choose", desk.text("listen.file-choose"), this::askFile),
            k -> k == Kind.FILE),
        shownFor(field("source-every", "listen.every", 4), k -> k == Kind.TYPED),
        shownFor(named("listen.unit", unit()), k -> k == Kind.TYPED));
  }

  private Node field(String id, String key, int columns) {
    return Fields.text(
        id,
        key,
        switch (id) {
          case "source-baud" -> model.baud();
          case "source-host" -> model.host();
          case "source-here" -> model.here();
          case "source-number" -> model.number();
          case "source-file" -> model.file();
          default -> model.every();
        },
        columns,
        desk.words());
  }

  private ComboBox<String> unit() {
    ComboBox<String> unit = new FoldingChoice<>();
    unit.setId("source-unit");
    unit.getItems().setAll("K", "V", "mV", "uV", "counts");
    unit.setConverter(Fields.shown(u -> said("import.unit-", u)));
    unit.valueProperty().bindBidirectional(model.unit());
    return unit;
  }

  private void askFile() {
    desk.files()
        .open(desk.text("listen.file-choose"), desk.text("listen.file-kind"), "*.*")
        .ifPresent((Path file) -> model.file().set(file.toString()));
  }

  private Node lines() {
    meaning.setId("source-profile");
    meaning.setConverter(
        Fields.shown(p -> p.map(ImportProfile::name).orElse(desk.text("listen.own-lines"))));
    fillMeanings();
    meaning.valueProperty().bindBidirectional(model.profile());
    model.profiles().addListener((ListChangeListener<ImportProfile>) change -> fillMeanings());
    return shownFor(
        Fields.line(
            named("listen.lines", meaning),
            Words.link("source-look", desk.text("listen.look"), model::look)),
        Kind::hasLines);
  }

  private void fillMeanings() {
    List<Optional<ImportProfile>> all = new ArrayList<>(List.of(Optional.empty()));
    model.profiles().forEach(p -> all.add(Optional.of(p)));
    all.removeAll(meaning.getItems());
    // added only: a choice that stands is not taken away for a moment
    meaning.getItems().addAll(all);
  }

  private void show(SourceChoiceModel.Seen now) {
    seen.getChildren().setAll(Rows.problems(now.problems(), true, desk.words()));
    if (!now.lines().isEmpty()) {
      LineReader.Begin begin =
          model.kind().get() == Kind.FILE ? LineReader.Begin.FILE : LineReader.Begin.STREAM;
      ImportModel made = new ImportModel(desk.words(), model.text(), now.lines(), begin);
      model.profile().get().ifPresent(made::beginFrom);
      seen.getChildren()
          .add(
              new ImportPreview(
                  desk.words(),
                  made,
                  List.copyOf(model.profiles()),
                  profile -> {
                    model.use(profile);
                    keep.accept(profile);
                  }));
    }
  }

  private Node named(String key, Node field) {
    return Fields.named(key, field, desk.words());
  }

  private Node shownFor(Node node, Predicate<Kind> when) {
    node.visibleProperty()
        .bind(Bindings.createBooleanBinding(() -> when.test(model.kind().get()), model.kind()));
    node.managedProperty().bind(node.visibleProperty());
    return node;
  }

  private String said(String key, String word) {
    return desk.text(key + word);
  }
}
