package faintwind.ui.frame;

import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** An empty place: names what will stand there and how it gets there. */
final class PlaceholderScreen implements Screen {
  private final VBox sheet = new VBox();
  private final ReadOnlyObjectWrapper<Next> next;

  PlaceholderScreen(Desk desk, Place place) {
    sheet.getStyleClass().add("sheet");
    Label title = new Label(desk.words().text(place.key()));
    title.getStyleClass().add("title");
    sheet.getChildren().add(title);
    next =
        new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, desk.words().text("window.nothing-yet")));
  }

  @Override
  public Node sheet() {
    return sheet;
  }

  @Override
  public ObservableValue<Next> next() {
    return next.getReadOnlyProperty();
  }
}
