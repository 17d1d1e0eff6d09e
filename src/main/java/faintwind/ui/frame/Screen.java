package faintwind.ui.frame;

import faintwind.ui.part.Next;
import faintwind.ui.work.Running;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.input.Clipboard;

/**
 * What the frame asks of whatever stands in it. The frame lays out, scrolls and folds; a screen
 * only gives its nodes.
 */
public interface Screen {

  /** The middle: do, read, type. */
  Node sheet();

  /** The left: where am I, or what do I choose. Empty where the sheet takes its room. */
  default Optional<Node> path() {
    return Optional.empty();
  }

  /**
   * The path in one line, for a narrow window or large text. Where it is empty the path is put
   * above the sheet whole if one chooses there, else below it.
   */
  default Optional<Node> pathLine() {
    return Optional.empty();
  }

  /**
   * The right: drawing, clock, source, from top to bottom. Empty where the sheet takes its room.
   */
  default List<Node> margin() {
    return List.of();
  }

  /** What to do now. */
  ObservableValue<Next> next();

  /** A job of minutes that this screen began and the Next line shows while it runs. */
  default Optional<Running> work() {
    return Optional.empty();
  }

  /** What gets the focus when the screen opens, such as the first empty reading. */
  default Optional<Node> firstFocus() {
    return Optional.empty();
  }

  /** Whether it is read from its top, although something further down has the focus. */
  default boolean isReadFirst() {
    return false;
  }

  /** What gets the focus when the node that had it is gone: the next thing that is not filled. */
  default Optional<Node> nextFocus() {
    return Focus.nextEmpty(sheet());
  }

  /** Ctrl+Z: takes the last change back; tells whether there was one. */
  default boolean undo() {
    return false;
  }

  /** The space bar, wherever the focus is but in a text; tells whether it was of use. */
  default boolean space() {
    return false;
  }

  /** Name of its own help; empty where that of its place is all there is. */
  default Optional<String> help() {
    return Optional.empty();
  }

  /** What would be lost if the screen were left now, and how it is kept. */
  default Optional<Unsaved> unsaved() {
    return Optional.empty();
  }

  /** Alt+Up. */
  default void previousStep() {}

  /** Alt+Down. */
  default void nextStep() {}

  /** F2: correct the entry that has the focus. */
  default void correct() {}

  /** Ctrl+P: put what is shown on paper. */
  default void print() {}

  /** Ctrl+V outside a text field: take what is on the clipboard; tells whether it was of use. */
  default boolean paste(Clipboard clipboard) {
    return false;
  }

  /** Called once when the frame shows something else. */
  default void left() {}
}
