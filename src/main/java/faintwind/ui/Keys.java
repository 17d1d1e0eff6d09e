package faintwind.ui;

import static javafx.scene.input.KeyCombination.ALT_DOWN;
import static javafx.scene.input.KeyCombination.SHIFT_DOWN;
import static javafx.scene.input.KeyCombination.SHORTCUT_DOWN;

import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Focus;
import faintwind.ui.frame.Frame;
import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Place;
import faintwind.ui.frame.Screen;
import faintwind.ui.part.PlotCard;
import faintwind.ui.part.WhyLink;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** The keys that work everywhere in the window. Plain Enter is not among them on purpose. */
final class Keys {
  private static final KeyCombination SPACE = new KeyCodeCombination(KeyCode.SPACE);

  private final Ways ways;
  private final Frame frame;
  private final NextLine nextLine;
  private final Desk desk;

  /**
   * What the window does.
   *
   * @param screen that stands in the frame
   * @param help shows the keys
   * @param askToStop asks whether long work should stop
   */
  record Ways(Supplier<Optional<Screen>> screen, Runnable help, Runnable askToStop) {}

  /** A key and what it does. */
  private record Key(KeyCodeCombination keys, Runnable act) {}

  Keys(Ways ways, Frame frame, NextLine nextLine, Desk desk) {
    this.ways = ways;
    this.frame = frame;
    this.nextLine = nextLine;
    this.desk = desk;
  }

  void listenOn(Scene scene) {
    List<Key> keys =
        List.of(
            key(KeyCode.ENTER, () -> nextLine.mainButton().ifPresent(b -> b.fire()), SHORTCUT_DOWN),
            key(KeyCode.F6, () -> region(scene, 1)),
            key(KeyCode.F6, () -> region(scene, -1), SHIFT_DOWN),
            key(KeyCode.UP, () -> ways.screen().get().ifPresent(Screen::previousStep), ALT_DOWN),
            key(KeyCode.DOWN, () -> ways.screen().get().ifPresent(Screen::nextStep), ALT_DOWN),
            key(KeyCode.F2, () -> ways.screen().get().ifPresent(Screen::correct)),
            key(KeyCode.F1, () -> why(scene), SHIFT_DOWN),
            key(KeyCode.F1, ways.help()),
            key(KeyCode.HOME, () -> desk.go().accept(Place.HOME), ALT_DOWN),
            key(KeyCode.T, () -> table(scene), SHORTCUT_DOWN),
            key(KeyCode.Z, () -> undo(scene), SHORTCUT_DOWN),
            key(KeyCode.P, () -> ways.screen().get().ifPresent(Screen::print), SHORTCUT_DOWN),
            key(KeyCode.PLUS, desk.look()::larger, SHORTCUT_DOWN),
            key(KeyCode.EQUALS, desk.look()::larger, SHORTCUT_DOWN),
            key(KeyCode.ADD, desk.look()::larger, SHORTCUT_DOWN),
            key(KeyCode.MINUS, desk.look()::smaller, SHORTCUT_DOWN),
            key(KeyCode.SUBTRACT, desk.look()::smaller, SHORTCUT_DOWN),
            key(KeyCode.F11, () -> desk.look().projector().set(!desk.look().projector().get())),
            place(KeyCode.DIGIT1, Place.DESIGN),
            place(KeyCode.DIGIT2, Place.MAKE),
            place(KeyCode.DIGIT3, Place.TURNTABLE),
            place(KeyCode.DIGIT4, Place.FORMULA),
            place(KeyCode.DIGIT5, Place.FIELD),
            place(KeyCode.DIGIT6, Place.RECORD));
    scene.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event ->
            // Another filter of the scene may have used it up: all of them are told.
            keys.stream()
                .filter(key -> !event.isConsumed() && key.keys().match(event))
                .findFirst()
                .ifPresent(
                    key -> {
                      event.consume();
                      key.act().run();
                    }));
    scene.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          boolean typing = scene.getFocusOwner() instanceof TextInputControl;
          if (SPACE.match(event)
              && !event.isConsumed()
              && !typing
              && ways.screen().get().filter(Screen::space).isPresent()) {
            event.consume();
          }
        });
    // A handler: a text field takes its own paste first.
    KeyCombination paste = new KeyCodeCombination(KeyCode.V, SHORTCUT_DOWN);
    scene.addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          boolean typing = scene.getFocusOwner() instanceof TextInputControl;
          if (paste.match(event) && !typing) {
            ways.screen().get().ifPresent(s -> s.paste(Clipboard.getSystemClipboard()));
          }
        });
    // A handler, not a filter: an open list or a field that uses Esc itself comes first.
    scene.addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ESCAPE && !desk.notes().close()) {
            ways.askToStop().run();
          }
        });
  }

  private static Key key(KeyCode code, Runnable act, KeyCombination.Modifier... modifiers) {
    return new Key(new KeyCodeCombination(code, modifiers), act);
  }

  private Key place(KeyCode digit, Place place) {
    return key(digit, () -> desk.go().accept(place), SHORTCUT_DOWN);
  }

  /** What is typed in a field is taken back first, letter by letter. */
  private void undo(Scene scene) {
    if (scene.getFocusOwner() instanceof TextInputControl field && field.isUndoable()) {
      field.undo();
    } else {
      ways.screen().get().ifPresent(Screen::undo);
    }
  }

  private void region(Scene scene, int direction) {
    List<Node> regions = frame.regions();
    int here = -1;
    for (int i = 0; i < regions.size(); i++) {
      if (Focus.isInside(scene.getFocusOwner(), regions.get(i))) {
        here = i;
      }
    }
    for (int k = 1; k <= regions.size(); k++) {
      Node region = regions.get(Math.floorMod(here + direction * k, regions.size()));
      Optional<Node> target =
          region == nextLine ? Optional.of(nextLine.focusTarget()) : Focus.first(region);
      if (target.isPresent()) {
        target.get().requestFocus();
        return;
      }
    }
  }

  private void why(Scene scene) {
    Optional.ofNullable(scene.getFocusOwner())
        .flatMap(Focus::rowOf)
        .flatMap(row -> find(row, WhyLink.class))
        .ifPresent(WhyLink::fire);
  }

  private void table(Scene scene) {
    Node focus = scene.getFocusOwner();
    for (Node node = focus; node != null; node = node.getParent()) {
      if (node instanceof PlotCard card) {
        card.toggleTable();
        return;
      }
    }
    find(frame, PlotCard.class).ifPresent(PlotCard::toggleTable);
  }

  private static <N extends Node> Optional<N> find(Node under, Class<N> type) {
    if (type.isInstance(under)) {
      return Optional.of(type.cast(under));
    }
    if (under instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        Optional<N> found = find(child, type);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }
}
