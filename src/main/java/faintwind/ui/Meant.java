package faintwind.ui;

import faintwind.ui.frame.Focus;
import faintwind.ui.frame.NextLine;
import java.util.EnumSet;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;

/**
 * Lets a key or a click through only where it can have been meant: one that waited while the window
 * was busy, the second click of a double one, or a key held down was made for what stood there
 * before. The Next line takes neither until a person has had time to see that it changed.
 */
final class Meant {
  private final Scene scene;
  private final NextLine nextLine;
  private final Set<KeyCode> held = EnumSet.noneOf(KeyCode.class);

  Meant(Scene scene, NextLine nextLine) {
    this.scene = scene;
    this.nextLine = nextLine;
  }

  /** Before every other filter of the scene. */
  void listen() {
    scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    scene.addEventFilter(KeyEvent.KEY_RELEASED, event -> held.remove(event.getCode()));
    scene.addEventFilter(MouseEvent.MOUSE_PRESSED, this::clicked);
  }

  private void pressed(KeyEvent event) {
    KeyCode code = event.getCode();
    boolean forNextLine = event.isShortcutDown() || isInside(scene.getFocusOwner(), nextLine);
    boolean typing = scene.getFocusOwner() instanceof TextInputControl && !event.isShortcutDown();
    if ((code != KeyCode.ENTER && code != KeyCode.SPACE) || typing) {
      return;
    }
    boolean again = !held.add(code);
    if (again || (forNextLine && !nextLine.isSeen())) {
      event.consume();
    }
  }

  private void clicked(MouseEvent event) {
    Node target = event.getTarget() instanceof Node node ? node : null;
    boolean again = event.getClickCount() > 1 && isOfButton(target);
    if (again || (isInside(target, nextLine) && !nextLine.isSeen())) {
      event.consume();
    }
  }

  private static boolean isInside(@Nullable Node node, Node region) {
    return Focus.isInside(node, region);
  }

  private static boolean isOfButton(@Nullable Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up instanceof ButtonBase) {
        return true;
      }
    }
    return false;
  }
}
