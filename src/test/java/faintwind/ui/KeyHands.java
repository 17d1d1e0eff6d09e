package faintwind.ui;

import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Place;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;

/** Hands that have a keyboard and no mouse. */
final class KeyHands {
  /** More stops than any screen has. */
  private static final int MOST_TABS = 250;

  private final FxRobot robot;
  private final Stage stage;

  KeyHands(FxRobot robot, Stage stage) {
    this.robot = robot;
    this.stage = stage;
  }

  /** Presses a button or link: by the key of its place, by Ctrl+Enter, else by Tab and Space. */
  void fire(String id) {
    Waiting.until(() -> Presses.there(robot, id));
    NextLine line = robot.lookup("#next-line").queryAs(NextLine.class);
    Waiting.until(line::isSeen);
    Optional<KeyCode> place = place(id);
    Optional<String> main = on(() -> line.mainButton().map(Button::getId));
    if (place.isPresent()) {
      press(KeyCode.CONTROL, place.get());
    } else if (main.filter(button -> id.equals("#" + button)).isPresent()) {
      press(KeyCode.CONTROL, KeyCode.ENTER);
    } else {
      goTo(id);
      Waiting.until(line::isSeen);
      press(KeyCode.SPACE);
    }
  }

  private static Optional<KeyCode> place(String id) {
    for (Place place : Place.values()) {
      if (id.equals("#" + place.id()) && place != Place.HOME) {
        return Optional.of(
            KeyCode.valueOf(
                String.format(Locale.ROOT, "DIGIT%d", List.of(Place.values()).indexOf(place))));
      }
    }
    return Optional.empty();
  }

  /** Walks with Tab until the focus is there. */
  void goTo(String id) {
    Waiting.until(() -> Presses.there(robot, id));
    for (int tabs = 0; tabs < MOST_TABS; tabs++) {
      if (id.equals("#" + focused())) {
        return;
      }
      press(KeyCode.TAB);
    }
    throw new AssertionError("Tab does not come to " + id);
  }

  /** Walks to the list of instruments and within it with the arrows. */
  void goToRow(String id) {
    goTo("#home-rows");
    press(KeyCode.HOME);
    for (int rows = 0; rows < MOST_TABS; rows++) {
      if (on(() -> robot.lookup(".list-cell:selected " + id).tryQuery().isPresent())) {
        return;
      }
      press(KeyCode.DOWN);
    }
    throw new AssertionError("No arrow comes to " + id);
  }

  private String focused() {
    return on(
        () -> {
          Node owner = stage.getScene().getFocusOwner();
          return owner == null ? "" : String.valueOf(owner.getId());
        });
  }

  /** Puts something in place of what stands in a field, and leaves it. */
  void type(String id, String typed) {
    goTo(id);
    press(KeyCode.CONTROL, KeyCode.A);
    robot.write(typed);
    press(KeyCode.TAB);
  }

  void press(KeyCode... keys) {
    robot.press(keys);
    for (int i = keys.length - 1; i >= 0; i--) {
      robot.release(keys[i]);
    }
  }

  private <V> V on(Supplier<V> look) {
    AtomicReference<V> seen = new AtomicReference<>();
    robot.interact(() -> seen.set(look.get()));
    return Objects.requireNonNull(seen.get());
  }
}
