package faintwind.calibration.speed;

import faintwind.calibration.Calibration;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.PreparedRow;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Averages the speed over time, each row weighted by the time it stands for, and states the
 * averaged speed's uncertainty and the flags that depend on it. Rows in which the speed means
 * nothing (warm-up, heater off) stay out of their neighbours' averages and have their own value; a
 * smoothed average does not reach across a sudden change of the wind. Holds no more rows than the
 * window. For one log and one thread.
 */
final class SpeedAverage {
  private static final double BEYOND = 1.05;

  /** Which rows about a row enter its average. */
  enum Window {
    CENTRED,
    PAST
  }

  private final double before_s;
  private final double after_s;
  private final double average_s;
  private final double floor_m_s;
  private final double top_m_s;
  private final SpeedUncertainty uncertainty;
  private final Deque<Optional<EstimatedRow>> waiting = new ArrayDeque<>();
  private final Deque<EstimatedRow> window = new ArrayDeque<>();
  private final Deque<EstimatedRow> coming = new ArrayDeque<>();
  private final WeightedSums sums = new WeightedSums();

  SpeedAverage(
      Calibration calibration, FieldFormula formula, SpeedSettings settings, Window shape) {
    average_s = settings.average_s();
    before_s = shape == Window.CENTRED ? average_s / 2 : average_s;
    after_s = shape == Window.CENTRED ? average_s / 2 : 0;
    floor_m_s = calibration.performance().floor_m_s();
    top_m_s = BEYOND * calibration.coverage().highest_m_s();
    uncertainty = new SpeedUncertainty(formula);
  }

  /** Takes the next row, empty for one that could not be read; hands on what is ready. */
  void accept(Optional<EstimatedRow> next, Consumer<SpeedRow> ready) {
    waiting.add(next);
    if (next.isEmpty()) {
      handOnBad(ready);
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
    handOnBad(ready);
  }

  private void handOn(double known_s, Consumer<SpeedRow> ready) {
    handOnBad(ready);
    while (!waiting.isEmpty()) {
      EstimatedRow first = waiting.getFirst().orElseThrow();
      if (known_s < first.row().time_s() + after_s) {
        return;
      }
      waiting.removeFirst();
      ready.accept(averaged(first));
      handOnBad(ready);
    }
  }

  private void handOnBad(Consumer<SpeedRow> ready) {
    while (!waiting.isEmpty() && waiting.getFirst().isEmpty()) {
      waiting.removeFirst();
      ready.accept(SpeedRow.BAD);
    }
  }

  private SpeedRow averaged(EstimatedRow row) {
    while (!coming.isEmpty() && reaches(row, coming.getFirst())) {
      EstimatedRow enters = coming.removeFirst();
      window.add(enters);
      sums.add(enters);
    }
    while (!window.isEmpty() && isPast(row, window.getFirst())) {
      sums.remove(window.removeFirst());
    }
    sums.refresh(window);
    if (average_s <= 0 || !row.averages() || window.isEmpty()) {
      EstimatedRow.Estimate own = row.estimate();
      return told(row, row.speed_m_s(), own.logLoss(), own.variance());
    }
    return told(
        row, sums.speed_m_s(), sums.logLoss(), sums.variance() * left(sums.correlation_s()));
  }

  /**
   * Share of the variance that is left in an average over A of an error whose correlation falls as
   * exp(−t/T): 2 (x − 1 + exp(−x)) / x² with x = A/T (mean of a stationary process; Papoulis 1965,
   * from memory).
   */
  private double left(double correlation_s) {
    double x = average_s / Math.max(1e-3, correlation_s);
    return x < 1e-3 ? 1 : 2 * (x - 1 + Math.exp(-x)) / (x * x);
  }

  private boolean reaches(EstimatedRow row, EstimatedRow later) {
    return later.place().segment() <= row.place().segment()
        && later.row().time_s() <= row.row().time_s() + after_s;
  }

  private boolean isPast(EstimatedRow row, EstimatedRow earlier) {
    return earlier.place().segment() < row.place().segment()
        || earlier.row().time_s() < row.row().time_s() - before_s;
  }

  private SpeedRow told(EstimatedRow row, double speed_m_s, double logLoss, double variance) {
    SpeedUncertainty.Band band = uncertainty.band(speed_m_s, row, logLoss, variance);
    EnumSet<SpeedFlag> flags = EnumSet.noneOf(SpeedFlag.class);
    flags.addAll(row.flags());
    if (speed_m_s < floor_m_s || !band.aboveStill()) {
      flags.add(SpeedFlag.FLOOR);
    }
    if (speed_m_s > top_m_s) {
      flags.add(SpeedFlag.ABOVE);
    }
    return new SpeedRow(OptionalDouble.of(speed_m_s), OptionalDouble.of(band.u95_m_s()), flags);
  }

  /** Time-weighted sums over the rows of a window. */
  private static final class WeightedSums {
    private static final int REFRESH = 2000;
    private double weight;
    private double speed;
    private double logLoss;
    private double variance;
    private double correlation;
    private int removed;

    void add(EstimatedRow row) {
      put(row, weightOf(row));
    }

    void remove(EstimatedRow row) {
      put(row, -weightOf(row));
      removed++;
    }

    /** Sums anew now and then, so that rounding does not gather. */
    void refresh(Deque<EstimatedRow> rows) {
      if (removed < REFRESH) {
        return;
      }
      removed = 0;
      weight = 0;
      speed = 0;
      logLoss = 0;
      variance = 0;
      correlation = 0;
      rows.forEach(this::add);
    }

    double speed_m_s() {
      return Math.max(0, speed / weight);
    }

    double logLoss() {
      return logLoss / weight;
    }

    double variance() {
      return Math.max(0, variance / weight);
    }

    double correlation_s() {
      return correlation / weight;
    }

    private void put(EstimatedRow row, double w) {
      weight += w;
      speed += w * row.speed_m_s();
      logLoss += w * row.estimate().logLoss();
      variance += w * row.estimate().variance();
      correlation += w * row.estimate().correlation_s();
    }

    private static double weightOf(EstimatedRow row) {
      double step_s = row.row().step_s();
      boolean joined = row.row().kind() == PreparedRow.Kind.USUAL;
      return joined || (step_s > 0 && step_s < 1) ? step_s : 1;
    }
  }
}
