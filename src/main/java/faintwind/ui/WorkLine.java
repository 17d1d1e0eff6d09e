package faintwind.ui;

import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Screen;
import faintwind.ui.work.Background;
import faintwind.ui.work.Running;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.util.Duration;

/** Shows in the Next line how far the work is, as long as some goes on. */
final class WorkLine {
  private static final Duration LOOK = Duration.millis(100);

  private final Background background;
  private final NextLine nextLine;
  private final Supplier<Optional<Screen>> screen;
  private final Timeline again = new Timeline(new KeyFrame(LOOK, event -> look()));

  /**
   * A line that follows the work.
   *
   * @param screen the one that stands in the frame; it may do work of its own
   */
  WorkLine(Background background, NextLine nextLine, Supplier<Optional<Screen>> screen) {
    this.background = background;
    this.nextLine = nextLine;
    this.screen = screen;
    again.setCycleCount(Animation.INDEFINITE);
    background
        .count()
        .addListener(
            (property, was, now) -> {
              if (now.intValue() > 0) {
                again.playFromStart();
              } else {
                again.stop();
                nextLine.workQuestionEnded();
              }
            });
  }

  Optional<Running> work() {
    return background.running().get().or(() -> screen.get().flatMap(Screen::work));
  }

  void look() {
    work()
        .filter(running -> running.shows(System.nanoTime()))
        .ifPresentOrElse(running -> nextLine.work(running, System.nanoTime()), nextLine::workEnded);
  }
}
