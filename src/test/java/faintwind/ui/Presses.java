package faintwind.ui;

import faintwind.ui.frame.NextLine;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.PickResult;
import org.testfx.api.FxRobot;
import org.testfx.service.query.NodeQuery;

/** Presses what a person would press, as soon as it is there. */
public final class Presses {
  private Presses() {}

  /** Waits for a button or link and presses it, in one go: the screens are drawn anew often. */
  public static void fire(FxRobot robot, String id) {
    fire(robot, () -> button(robot.lookup(id)));
  }

  /** The same, looked for in one window before any other. */
  static void fire(FxRobot robot, Node window, String id) {
    fire(robot, () -> button(robot.from(window).lookup(id)).or(() -> button(robot.lookup(id))));
  }

  private static void fire(FxRobot robot, Supplier<Optional<ButtonBase>> look) {
    AtomicBoolean pressed = new AtomicBoolean();
    Waiting.until(
        () -> {
          robot.interact(
              () -> {
                Optional<ButtonBase> button = look.get();
                button.ifPresent(ButtonBase::fire);
                pressed.set(button.isPresent());
              });
          return pressed.get();
        });
  }

  private static Optional<ButtonBase> button(NodeQuery query) {
    return query.match(Node::isVisible).tryQueryAs(ButtonBase.class);
  }

  /** Looks at the screen while nothing draws it anew. */
  public static boolean onScreen(FxRobot robot, BooleanSupplier look) {
    AtomicBoolean seen = new AtomicBoolean();
    robot.interact(() -> seen.set(look.getAsBoolean()));
    return seen.get();
  }

  /** Whether something with this id can be seen. */
  public static boolean there(FxRobot robot, String id) {
    return onScreen(robot, () -> robot.lookup(id).tryQuery().filter(Node::isVisible).isPresent());
  }

  /** A click of the first button. */
  static MouseEvent click() {
    PickResult nowhere = new PickResult(null, 0, 0);
    return new MouseEvent(
        MouseEvent.MOUSE_CLICKED,
        0,
        0,
        0,
        0,
        MouseButton.PRIMARY,
        1,
        false,
        false,
        false,
        false,
        true,
        false,
        false,
        true,
        false,
        true,
        nowhere);
  }

  /** Waits until what the Next line says now has stood long enough to be clicked. */
  public static void seen(FxRobot robot) {
    NextLine line = robot.lookup("#next-line").queryAs(NextLine.class);
    Waiting.until(line::isSeen);
  }
}
