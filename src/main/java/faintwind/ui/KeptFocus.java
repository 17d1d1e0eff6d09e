package faintwind.ui;

import faintwind.ui.frame.Focus;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;

/**
 * Keeps the focus at the work. Where the node that had it goes away, JavaFX gives it to the first
 * one of the window, which is a tab; it belongs to the next thing to do instead. Where a person put
 * it, it stays.
 */
final class KeptFocus {
  private final Scene scene;
  private final Node strip;
  private final Supplier<Node> nextThing;
  private boolean byHand;

  KeptFocus(Scene scene, Node strip, Supplier<Node> nextThing) {
    this.scene = scene;
    this.strip = strip;
    this.nextThing = nextThing;
  }

  void listen() {
    scene.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.TAB || event.getCode().isArrowKey()) {
            moveByHand();
          }
        });
    scene.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> moveByHand());
    scene
        .focusOwnerProperty()
        .addListener(
            (property, was, now) -> {
              if (!byHand && isAstray()) {
                Platform.runLater(this::bringBack);
              }
            });
  }

  private void moveByHand() {
    byHand = true;
    Platform.runLater(() -> byHand = false);
  }

  private boolean isAstray() {
    Node owner = scene.getFocusOwner();
    return owner == null || Focus.isInside(owner, strip);
  }

  private void bringBack() {
    if (isAstray()) {
      nextThing.get().requestFocus();
    }
  }
}
