package faintwind.ui.home;

import faintwind.ui.part.Mark;
import java.util.Locale;

/** Which instruments the list shows. */
enum HomeFilter {
  ALL,
  NEEDS_YOU,
  CLOCK_RUNS,
  IN_USE,
  ARCHIVED;

  /** Bundle key of its words. */
  String key() {
    return "window.home.filter." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  boolean shows(HomeView.Line line) {
    Mark mark = line.state().mark();
    return switch (this) {
      case ALL -> !line.board().archived();
      case NEEDS_YOU ->
          !line.board().archived() && (mark == Mark.BLOCKED || mark == Mark.ATTENTION);
      case CLOCK_RUNS -> !line.board().archived() && line.board().clockRuns();
      case IN_USE -> !line.board().archived() && mark == Mark.DONE;
      case ARCHIVED -> line.board().archived();
    };
  }
}
