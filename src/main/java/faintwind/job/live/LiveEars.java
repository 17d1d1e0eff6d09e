package faintwind.job.live;

import faintwind.calibration.live.LiveRow;
import faintwind.calibration.speed.SpeedRow;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** Who hears of a recording, and what is said of its source. For one recording. */
final class LiveEars {
  private final Where source;
  private final NewsGate gate = new NewsGate();
  private final List<LiveListener> listeners = new CopyOnWriteArrayList<>();

  LiveEars(String source) {
    this.source = Where.file(source);
  }

  void add(LiveListener listener) {
    listeners.add(listener);
  }

  /** A row that is in the file by now. */
  void row(LiveRow row, Optional<SpeedRow> speed) {
    listeners.forEach(listener -> listener.row(row));
    speed.ifPresent(found -> listeners.forEach(listener -> listener.speed(row, found)));
  }

  /** Something about the source. */
  void tell(LiveNews.Kind kind, Instant at, String id, String found, String... details) {
    tell(kind, at, Problem.warning(id, source, found, details));
  }

  void tell(LiveNews.Kind kind, Instant at, Problem problem) {
    if (gate.opens(kind + problem.id(), at)) {
      LiveNews news = new LiveNews(kind, problem);
      listeners.forEach(listener -> listener.happened(news));
    }
  }
}
