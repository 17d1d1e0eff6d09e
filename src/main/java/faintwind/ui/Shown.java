package faintwind.ui;

import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Frame;
import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Screen;
import faintwind.ui.part.Next;
import faintwind.ui.work.Running;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;

/** The screen that stands in the frame; what it says comes next, and its work, in the Next line. */
final class Shown {
  private final Desk desk;
  private final Frame frame;
  private final NextLine nextLine;
  private final WorkLine work;
  private final ChangeListener<Next> nextChanged;
  private Optional<Screen> screen = Optional.empty();

  Shown(Desk desk, Frame frame, NextLine nextLine) {
    this.desk = desk;
    this.frame = frame;
    this.nextLine = nextLine;
    work = new WorkLine(desk.background(), nextLine, () -> screen);
    nextChanged = (property, was, now) -> nextLine.show(now);
  }

  Optional<Screen> screen() {
    return screen;
  }

  Optional<Running> work() {
    return work.work();
  }

  /** Another screen takes its place. */
  void show(Screen now) {
    screen.ifPresent(
        old -> {
          old.next().removeListener(nextChanged);
          old.left();
        });
    desk.notes().clear();
    screen = Optional.of(now);
    now.next().addListener(nextChanged);
    nextLine.show(now.next().getValue());
    nextLine.renew();
    work.look();
    frame.show(now);
    // After the layout, when the nodes of the new screen are in the scene.
    Platform.runLater(
        () -> now.firstFocus().or(now::nextFocus).orElseGet(nextLine::focusTarget).requestFocus());
  }

  /** What has the focus where nothing else has it. */
  Node nextThing() {
    return screen.flatMap(Screen::nextFocus).orElseGet(nextLine::focusTarget);
  }
}
