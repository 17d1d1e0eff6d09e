package faintwind.calibration.field;

import faintwind.calibration.field.FieldSummary.Gust;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds gusts. A gust begins where a row's speed exceeds one and a half times the mean of the ten
 * minutes about it, and that mean by more than the row's expanded uncertainty; it has passed where
 * the speed is back at the mean. Own definition: the meteorologists' gust of three seconds is
 * shorter than what a heated ball can follow.
 */
final class Gusts {
  /** Length of the mean that a gust stands out of, s. */
  static final double MEAN_S = 600;

  /** How far it stands out. */
  static final double FACTOR = 1.5;

  private final SpeedSeries rows;
  private final List<Gust> found = new ArrayList<>();
  private Optional<Rising> open = Optional.empty();

  /** A gust that has not ended: rows where it began and where it is strongest so far. */
  private record Rising(int begun, int peak) {}

  private Gusts(SpeedSeries rows) {
    this.rows = rows;
  }

  /** All of them, strongest first. */
  static List<Gust> of(SpeedSeries rows) {
    return new Gusts(rows).find();
  }

  private List<Gust> find() {
    double time_s = 0;
    double way_m = 0;
    int first = 0;
    int end = 0;
    for (int i = 0; i < rows.size(); i++) {
      double at_s = rows.time_s(i);
      for (; end < rows.size() && rows.time_s(end) <= at_s + MEAN_S / 2; end++) {
        time_s += used_s(end);
        way_m += used_s(end) * rows.speed_m_s(end);
      }
      for (; rows.time_s(first) < at_s - MEAN_S / 2; first++) {
        time_s -= used_s(first);
        way_m -= used_s(first) * rows.speed_m_s(first);
      }
      if (rows.isUsed(i) && time_s > 0) {
        see(i, way_m / time_s);
      } else {
        close(i);
      }
    }
    close(rows.size() - 1);
    found.sort(Comparator.comparingDouble(Gust::peak_m_s).reversed());
    return found;
  }

  private double used_s(int row) {
    return rows.isUsed(row) ? rows.lasts_s(row) : 0;
  }

  private void see(int row, double mean_m_s) {
    double speed_m_s = rows.speed_m_s(row);
    if (open.isPresent() && speed_m_s <= mean_m_s) {
      close(row);
    }
    boolean out = speed_m_s > FACTOR * mean_m_s && speed_m_s - mean_m_s > rows.u95_m_s(row);
    if (open.isEmpty() && out) {
      open = Optional.of(new Rising(row, row));
    }
    open.filter(gust -> speed_m_s > rows.speed_m_s(gust.peak()))
        .ifPresent(gust -> open = Optional.of(new Rising(gust.begun(), row)));
  }

  private void close(int row) {
    open.ifPresent(
        gust ->
            found.add(
                new Gust(
                    rows.time_s(gust.begun()),
                    rows.time_s(row),
                    rows.speed_m_s(gust.peak()),
                    rows.u95_m_s(gust.peak()),
                    rows.time_s(gust.peak()))));
    open = Optional.empty();
  }
}
