package faintwind.ui.turntable;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;

/** The links to the ways of bringing runs in; the one that is open is marked. */
final class ChosenWay {
  private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  private final VBox room;
  private final List<Hyperlink> links;

  /**
   * Links to ways, none of them open.
   *
   * @param room where a way opens; emptied, none is open any more
   */
  ChosenWay(VBox room, Hyperlink... links) {
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
  void open(Hyperlink link, Node way) {
    room.getChildren().setAll(way);
    mark(Optional.of(link));
  }

  private void mark(Optional<Hyperlink> open) {
    links.forEach(
        link -> link.pseudoClassStateChanged(HERE, open.filter(it -> it == link).isPresent()));
  }
}
