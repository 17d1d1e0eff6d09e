package faintwind.ui.home;

import faintwind.message.Typeset;
import faintwind.ui.fold.Heads;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Screen;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Fields;
import faintwind.ui.part.PictureView;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.StringProperty;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The instruments of a folder, or the first run. */
public final class HomeScreen extends DataScreen {
  private final HomeModel model;
  private final HomeMargin margin;

  private final HomeList rows;
  private final HBox classes = Boxes.row("first-choices");

  @FXML private Label title;
  @FXML private VBox list;
  @FXML private Heads heads;
  @FXML private Label orderSaid;
  @FXML private Hyperlink order;
  @FXML private TextField find;
  @FXML private ComboBox<HomeFilter> filter;
  @FXML private Button archive;
  @FXML private Button compare;
  @FXML private Label remark;
  @FXML private VBox broken;
  @FXML private VBox first;
  @FXML private VBox naming;

  /**
   * A screen.
   *
   * @param show shows another one in its place
   */
  public HomeScreen(Desk desk, HomeModel model, Consumer<Screen> show) {
    super(desk, model.next());
    model.picked().whenCompared(compared -> show.accept(CompareScreen.of(desk, compared)));
    this.model = model;
    rows = new HomeList(desk.words(), model, this::showPicked);
    VBox.setVgrow(rows, Priority.ALWAYS);
    list.getChildren().add(list.getChildren().indexOf(broken), rows);
    heads.over(rows::rows);
    TakingIn takingIn = model.takingIn(desk);
    margin = new HomeMargin(desk.words(), model, takingIn);
    order.setOnAction(event -> model.toggleOrder());
    find.textProperty().addListener((text, was, now) -> model.find(now));
    fillBoard();
    fillFirst(takingIn);
    fillNaming();
    withMargin(margin.node());
    filledBy(model.classes().found(), found -> showClasses());
    filledBy(model.view(), this::show);
    filledBy(model.mode(), this::showMode);
    model.read();
  }

  private void show(HomeView view) {
    boolean came = rows.getItems().isEmpty() && !view.lines().isEmpty();
    margin.show(view);
    orderSaid.setText(text(model.isByName() ? "window.home.by-name" : "window.home.by-need"));
    order.setText(text(model.isByName() ? "window.home.order-need" : "window.home.order-name"));
    showPicked();
    Boxes.present(find, model.size() > HomeList.FEW);
    rows.show(view.lines());
    broken
        .getChildren()
        .setAll(view.broken().stream().map(b -> (Node) Words.label(b, "broken-folder")).toList());
    if (model.mode().get() == HomeModel.Mode.LIST) {
      title.setText(view.title());
    }
    if (came) {
      // After the layout, when the rows are in the scene.
      Platform.runLater(() -> firstFocus().ifPresent(Node::requestFocus));
    }
  }

  /** What is shown of the bench, and what is done with the rows that are ticked. */
  private void fillBoard() {
    filter.getItems().setAll(HomeFilter.values());
    filter.setConverter(Fields.shown(f -> text(f.key())));
    filter.setValue(HomeFilter.ALL);
    filter.valueProperty().addListener((property, was, now) -> model.filter(now));
    for (Region few : List.of(order, filter, compare, archive)) {
      few.setMinWidth(Region.USE_PREF_SIZE); // two words below one another look like two
    }
    archive.setOnAction(event -> model.archive());
    compare.setOnAction(event -> model.picked().compare());
    compare.setText(text("window.home.compare"));
    remark.textProperty().bind(model.picked().remark().map(Typeset::of));
    model
        .picked()
        .remark()
        .addListener((property, was, now) -> Boxes.present(remark, !now.isEmpty()));
    Boxes.present(remark, false);
    showPicked();
  }

  private void showPicked() {
    int picked = model.picked().size();
    Boxes.present(archive, picked > 0);
    Boxes.present(compare, picked > 1);
    String key = model.showsArchive() ? "window.home.bring-back" : "window.home.archive";
    archive.setText(text(key, picked));
    rows.showTicks();
  }

  private void showMode(HomeModel.Mode mode) {
    Boxes.present(list, mode == HomeModel.Mode.LIST);
    Boxes.present(first, mode == HomeModel.Mode.FIRST_RUN);
    Boxes.present(naming, mode == HomeModel.Mode.NAMING);
    margin.showMode(mode);
    switch (mode) {
      case READING -> title.setText("");
      case LIST -> title.setText(model.view().get().title());
      case FIRST_RUN -> title.setText(text("window.home.first"));
      case NAMING -> {
        title.setText(text("window.home.new"));
        naming.lookup("#new-name").requestFocus();
      }
    }
  }

  private void fillFirst(TakingIn takingIn) {
    PictureView.of("principle-wide.svg", text("window.home.principle-shows"))
        .map(picture -> picture.in(desk().words()))
        .ifPresent(
            picture -> {
              picture.getStyleClass().add("principle-large");
              first.getChildren().add(picture);
            });
    Button start = Words.button("first-start", text("window.home.start"), model::beginNaming);
    Button rehearse = Words.button("first-rehearse", text("window.home.rehearse"), model::rehearse);
    VBox later = new VBox(rehearse, Words.label(text("window.home.rehearse-why"), "fine", "soft"));
    Hyperlink demo = Words.link("first-demo", text("window.home.demo"), model::openDemo);
    Hyperlink makeClass = Words.link("first-class", text("class.make"), model.classes()::make);
    Hyperlink takeIn = Words.link("first-take-in", text("take-in.act"), takingIn::ask);
    HBox choices = Boxes.row("first-choices", start, later, demo, makeClass, takeIn);
    first
        .getChildren()
        .addAll(Words.label(text("window.home.first-why"), "tell"), classes, choices);
  }

  private void showClasses() {
    margin.showClasses();
    classes.getChildren().setAll(model.classes().buttons(desk().words()));
    Boxes.present(classes, !classes.getChildren().isEmpty());
  }

  private void fillNaming() {
    naming
        .getChildren()
        .addAll(
            labelled("new-name", "window.home.name", model.newName()),
            Words.label(text("window.home.name-example"), "fine", "soft"),
            labelled("new-who", "window.home.who", model.who()),
            Words.label(text("window.home.who-why"), "fine", "soft"));
  }

  private Node labelled(String id, String key, StringProperty value) {
    TextField field = new TextField();
    field.setId(id);
    field.setAccessibleText(text(key));
    field.textProperty().bindBidirectional(value);
    Label label = Words.label(text(key), "tell");
    label.setLabelFor(field);
    return Boxes.column("labelled", label, field);
  }

  @Override
  public Optional<Node> firstFocus() {
    return rows.getItems().isEmpty() ? Optional.empty() : Optional.of(rows);
  }
}
