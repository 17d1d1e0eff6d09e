package faintwind.terminal;

import faintwind.calibration.live.LiveHead;
import faintwind.calibration.live.LiveRow;
import faintwind.calibration.speed.SpeedRow;
import faintwind.job.live.LiveListener;
import faintwind.job.live.LiveNews;
import faintwind.job.live.LiveSpeed;
import java.util.List;

/** Tells on standard error what happens to a recording, and on standard output its air speed. */
public final class ListenNews implements LiveListener {
  private final Terminal terminal;

  public ListenNews(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Begins the table of air speeds. */
  public void begin(LiveHead head) {
    LiveSpeed.head(head).forEach(terminal.out()::println);
  }

  @Override
  public void row(LiveRow row) {}

  @Override
  public void speed(LiveRow row, SpeedRow speed) {
    terminal.out().println(LiveSpeed.cells(row, speed));
  }

  @Override
  public void happened(LiveNews news) {
    switch (news.kind()) {
      case CONNECTED, ENDED -> terminal.err().println(terminal.messages().note(news.problem()));
      case GAP, UNREADABLE, OTHER_SENDER, RECONNECTING -> terminal.report(List.of(news.problem()));
    }
  }
}
