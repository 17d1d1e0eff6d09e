package faintwind.ui;

import faintwind.ui.frame.NextLine;
import faintwind.ui.frame.Screen;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.work.Background;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Leaves a screen or the whole window: what is not on disk is written first, or asked about. */
final class Leaving {
  private final Background background;
  private final NextLine nextLine;
  private final Questions questions;

  Leaving(Background background, NextLine nextLine, Questions questions) {
    this.background = background;
    this.nextLine = nextLine;
    this.questions = questions;
  }

  /** Leaves a screen, once it is said what becomes of what is not kept. */
  void leave(Optional<Screen> screen, Runnable then) {
    settle();
    questions.askEach(screen.flatMap(Screen::unsaved).stream().toList(), then);
  }

  /** What stands half typed in a field is taken as if the field had been left. */
  private void settle() {
    nextLine.focusTarget().requestFocus();
  }

  /**
   * Leaves the window.
   *
   * @param elsewhere what is not kept on screens that are not shown
   * @param close closes it, once every entry is on disk
   */
  void leaveAll(
      Optional<Screen> screen,
      List<Unsaved> elsewhere,
      Optional<OpenInstrument> instrument,
      Runnable close) {
    settle();
    List<Unsaved> all = new ArrayList<>(screen.flatMap(Screen::unsaved).stream().toList());
    all.addAll(elsewhere);
    questions.askEach(
        all,
        () -> {
          screen.ifPresent(Screen::left);
          // Behind everything that waits to be worked out and kept.
          background.entry(
              watch -> true,
              done -> instrument.ifPresentOrElse(opened -> opened.whenWritten(close), close),
              world -> close.run());
        });
  }
}
