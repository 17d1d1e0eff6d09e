package faintwind.ui.frame;

import faintwind.message.Typeset;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.part.PictureView;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Asked once: text size, colours and motion, which JavaFX cannot learn from the system. */
public final class FirstStartScreen implements Screen {
  private static final int[] SIZES_PCT = {100, 125, 150, 200};

  private final Desk desk;
  private final VBox sheet = Boxes.column("sheet first-start");
  private final ReadOnlyObjectWrapper<Next> next;

  public FirstStartScreen(Desk desk, Runnable keep) {
    this.desk = desk;
    sheet.setId("first-start");
    CheckBox less = new CheckBox(desk.text("window.first.less"));
    less.setId("first-less-motion");
    less.setWrapText(true);
    less.selectedProperty().bindBidirectional(desk.look().lessMotion());
    sheet
        .getChildren()
        .addAll(
            Words.label(desk.text("window.first.title"), "title"),
            Words.label(desk.text("window.first.size"), "tell", "semibold"),
            sizes(),
            Words.label(desk.text("window.first.theme"), "tell", "semibold"),
            themes(),
            Words.label(desk.text("window.first.motion"), "tell", "semibold"),
            less,
            Words.label(desk.text("window.first.later"), "soft"));
    next =
        new ReadOnlyObjectWrapper<>(
            Next.say(
                Mark.READY,
                desk.text("window.first.next"),
                new Act("first-keep", desk.text("window.first.keep"), keep)));
  }

  @Override
  public List<Node> margin() {
    VBox sample = Boxes.column("aside-part");
    sample
        .getChildren()
        .addAll(
            Words.label(desk.text("window.home.how"), "tell", "semibold"),
            Words.label(desk.text("window.home.how-text"), "soft"));
    PictureView.of("principle.svg", desk.text("window.home.principle-shows"))
        .map(picture -> picture.in(desk.words()))
        .ifPresent(sample.getChildren()::add);
    return List.of(sample);
  }

  private HBox sizes() {
    ToggleGroup group = new ToggleGroup();
    HBox box = Boxes.row("first-line");
    for (int pct : SIZES_PCT) {
      RadioButton button = new RadioButton(Typeset.of(desk.text("window.text-pct", pct)));
      button.setId("first-size-" + pct);
      button.setToggleGroup(group);
      button.setSelected(pct == desk.look().textPct().get());
      button.setOnAction(event -> desk.look().textPct().set(pct));
      box.getChildren().add(button);
    }
    return box;
  }

  private HBox themes() {
    ToggleGroup group = new ToggleGroup();
    HBox box = Boxes.row("first-line");
    for (Theme theme : Theme.values()) {
      RadioButton button = new RadioButton(desk.text(theme.key()));
      button.setId("first-" + theme.styleClass());
      button.setToggleGroup(group);
      button.setSelected(theme == desk.look().theme().get());
      button.setOnAction(event -> desk.look().theme().set(theme));
      box.getChildren().add(button);
    }
    return box;
  }

  @Override
  public Node sheet() {
    return sheet;
  }

  @Override
  public Optional<Node> firstFocus() {
    return Optional.ofNullable(sheet.lookup("#first-size-" + desk.look().textPct().get()));
  }

  @Override
  public ObservableValue<Next> next() {
    return next.getReadOnlyProperty();
  }
}
