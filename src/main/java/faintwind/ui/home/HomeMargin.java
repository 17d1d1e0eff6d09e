package faintwind.ui.home;

import faintwind.message.Messages;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.PictureView;
import faintwind.ui.part.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The margin of the list: how the instrument feels the air, running clocks, new instruments. */
final class HomeMargin {
  private final Messages words;
  private final VBox column = Boxes.column("aside");
  private final VBox principle = Boxes.column("aside-part");
  private final VBox clocks = Boxes.column("aside-part");
  private final TodayBox today;
  private final FlowPane buttons = new FlowPane(12, 12);
  private final HomeClasses classes;
  private final List<Node> own;

  HomeMargin(Messages words, HomeModel model, TakingIn takingIn) {
    this.words = words;
    column.setId("home-margin");
    principle
        .getChildren()
        .addAll(
            Words.label(words.text("window.home.how"), "tell", "semibold"),
            Words.label(words.text("window.home.how-text"), "soft"));
    PictureView.of("principle.svg", words.text("window.home.principle-shows"))
        .map(picture -> picture.in(words))
        .ifPresent(principle.getChildren()::add);
    principle
        .getChildren()
        .add(Words.label(words.text("window.home.principle-source"), "fine", "soft"));
    today = new TodayBox(words, model.today(), model::open);
    Button begin =
        Words.button("new-instrument", words.text("window.home.new"), model::beginNaming);
    Hyperlink demo = Words.link("open-demo", words.text("window.home.demo"), model::openDemo);
    Hyperlink rehearse =
        Words.link("home-rehearse", words.text("window.home.rehearse"), model::rehearse);
    Hyperlink takeIn = Words.link("take-in", words.text("take-in.act"), takingIn::ask);
    Hyperlink makeClass = Words.link("make-class", words.text("class.make"), model.classes()::make);
    // beside the made-up instruments nothing of one's own is begun
    own = model.isDemo() ? List.of() : List.of(begin, makeClass, takeIn, rehearse, demo);
    classes = model.classes();
    buttons.getStyleClass().add("margin-buttons");
  }

  Node node() {
    return column;
  }

  void show(HomeView view) {
    clocks.getChildren().setAll(Words.label(words.text("window.home.clocks"), "tell", "semibold"));
    for (HomeView.Clock clock : view.clocks()) {
      Label name = Words.label(clock.name());
      Boxes.grow(name);
      Label left = Words.whole(clock.left(), "semibold", "mark-waiting");
      HBox line =
          Boxes.row(
              "mark-label",
              new MarkShape(Mark.WAITING, words.text(Mark.WAITING.key()), clock.share()),
              name,
              left);
      clocks.getChildren().add(line);
    }
    if (view.clocks().isEmpty()) {
      clocks.getChildren().add(Words.label(words.text("window.home.no-clocks"), "soft"));
    }
  }

  /** A button for each class there is, before what can be begun. */
  void showClasses() {
    buttons.getChildren().setAll(classes.buttons(words));
    buttons.getChildren().addAll(own);
  }

  void showMode(HomeModel.Mode mode) {
    column.getChildren().setAll(principle);
    if (mode == HomeModel.Mode.LIST) {
      column.getChildren().setAll(today, Words.rule(), clocks, buttons, Words.rule(), principle);
    }
    // The first run has the drawing large, in the sheet.
    column.setVisible(mode != HomeModel.Mode.FIRST_RUN);
  }
}
