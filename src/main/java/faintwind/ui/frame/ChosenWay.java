package faintwind.ui.frame;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;

/** Links to ways of doing something, each with a form; the one that is open is marked. */
public final class ChosenWay {
  private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  private final VBox room;
  private final List<Hyperlink> links;

  /**
   * Links to ways, none of them open.
   *
   * @param room where a way opens; emptied, none is open any more
   */
  public ChosenWay(VBox room, Hyperlink... links) {
    this.room = room;
    this.links = List.of(links);
    this.links.forEach(link -> link.getStyleClass().add("way"));
    room.getChildren()
        .addListener(
            (ListChangeListener<Node>)
                change -> {
                  if (change.getList().isEmpty()) {
                    mark(Optional.empty());
                  }
                });
  }

  /** Opens a way in place of what was open. */
  public void open(Hyperlink link, Node way) {
    room.getChildren().setAll(way);
    mark(Optional.of(link));
  }

  private void mark(Optional<Hyperlink> open) {
    links.forEach(
        link -> link.pseudoClassStateChanged(HERE, open.filter(it -> it == link).isPresent()));
  }
}
