package faintwind.ui;

import faintwind.ui.part.Next;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

/**
 * What a screen of data hands to the frame: a sheet, what stands beside it, the Next line; and the
 * filling of them at every change of what its model shows.
 *
 * @param sheet the middle
 * @param path the left; empty where the sheet takes its room
 * @param margin the right; empty where the sheet takes its room
 * @param next what to do now
 */
record DataScreen(Node sheet, Optional<Node> path, List<Node> margin, ObservableValue<Next> next)
    implements Screen {

  DataScreen {
    margin = List.copyOf(margin);
  }

  /** A sheet alone. */
  static DataScreen of(Node sheet, ObservableValue<Next> next) {
    return new DataScreen(sheet, Optional.empty(), List.of(), next);
  }

  /** The same with a path at its left. */
  DataScreen withPath(Node left) {
    return new DataScreen(sheet, Optional.of(left), margin, next);
  }

  /** The same with a margin at its right. */
  DataScreen withMargin(Node right) {
    return new DataScreen(sheet, path, List.of(right), next);
  }

  /** Fills now and at every change. */
  <V> DataScreen filledBy(ObservableValue<V> view, Consumer<V> fill) {
    view.addListener((property, was, now) -> fill.accept(now));
    fill.accept(view.getValue());
    return this;
  }
}
