package faintwind.calibration.speed;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Averages the speed over time, each row weighted by the time it stands for, and states the
 * averaged speed's uncertainty and the flags that depend on it. Rows in which the speed means
 * nothing (warm-up, heater off) stay out of their neighbours' averages and have their own value; a
 * smoothed average does not reach across a sudden change of the wind. Holds no more rows than the
 * window. For one log and one thread.
 */
final class SpeedAverage {
  /** Which rows about a row enter its average. */
  enum Window {
    CENTRED,
    PAST
  }

  private final double before_s;
  private final double after_s;
  private final double average_s;
  private final SpeedTeller teller;
  private final Deque<Optional<EstimatedRow>> waiting = new ArrayDeque<>();
  private final Deque<EstimatedRow> window = new ArrayDeque<>();
  private final Deque<EstimatedRow> coming = new ArrayDeque<>();
  private final WeightedSums sums;

  SpeedAverage(SpeedTeller teller, double average_s, Window shape) {
    this.teller = teller;
    sums = teller.sums();
    this.average_s = average_s;
    before_s = shape == Window.CENTRED ? average_s / 2 : average_s;
    after_s = shape == Window.CENTRED ? average_s / 2 : 0;
  }

  /** Takes the next row, empty for one that could not be read; hands on what is ready. */
  void accept(Optional<EstimatedRow> next, Consumer<SpeedRow> ready) {
    waiting.add(next);
    if (next.isEmpty()) {
      handOn(Double.NEGATIVE_INFINITY, ready);
      return;
    }
    EstimatedRow row = next.get();
    if (row.averages() && !row.place().withinChange()) {
      coming.add(row);
    }
    handOn(row.row().time_s(), ready);
  }

  void finish(Consumer<SpeedRow> ready) {
    handOn(Double.POSITIVE_INFINITY, ready);
  }

  private void handOn(double known_s, Consumer<SpeedRow> ready) {
    Optional<EstimatedRow> first = waiting.peekFirst();
    while (first != null) {
      if (first.isPresent() && known_s < first.get().row().time_s() + after_s) {
        return;
      }
      waiting.removeFirst();
      ready.accept(first.isPresent() ? averaged(first.get()) : SpeedRow.BAD);
      first = waiting.peekFirst();
    }
  }

  private SpeedRow averaged(EstimatedRow row) {
    EstimatedRow enters = coming.peekFirst();
    while (enters != null && reaches(row, enters)) {
      coming.removeFirst();
      window.add(enters);
      sums.add(enters);
      enters = coming.peekFirst();
    }
    EstimatedRow first = window.peekFirst();
    while (first != null && isPast(row, first)) {
      window.removeFirst();
      sums.remove(first);
      first = window.peekFirst();
    }
    sums.refresh(window);
    if (average_s <= 0 || !row.averages() || first == null) {
      return teller.told(row, WeightedSums.Mean.of(row));
    }
    return teller.told(row, sums.mean(first, window.getLast()));
  }

  private boolean reaches(EstimatedRow row, EstimatedRow later) {
    return later.place().segment() <= row.place().segment()
        && later.row().time_s() <= row.row().time_s() + after_s;
  }

  private boolean isPast(EstimatedRow row, EstimatedRow earlier) {
    return earlier.place().segment() < row.place().segment()
        || earlier.row().time_s() < row.row().time_s() - before_s;
  }
}
