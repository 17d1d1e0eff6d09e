package faintwind.accuracy;

import faintwind.accuracy.ScoredLog.Hold;
import faintwind.accuracy.ScoredLog.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The measures by which converted logs are scored against true speeds. */
final class FieldScores {
  private static final double LEAST_M_S = 0.1;
  private static final double TOP_M_S = 3.0001;
  private static final double MEAN_S = 60;
  private static final double AFTER_STEP_S = 60;

  private FieldScores() {}

  /** Relative error of the median of the last third of each hold over 0.1–3 m/s, rms. */
  static double calibrationRms(ScoredLog probe) {
    return rms(holds(probe, LEAST_M_S).stream().map(h -> reading(h) / h.truth_m_s() - 1).toList());
  }

  /** The same errors' mean, which tells a scale that is wrong as a whole. */
  static double meanError(ScoredLog probe) {
    return holds(probe, LEAST_M_S).stream()
        .mapToDouble(h -> reading(h) / h.truth_m_s() - 1)
        .average()
        .orElseThrow();
  }

  /** Share of moving holds whose truth lies within the stated band. */
  static double within(ScoredLog probe) {
    List<Hold> holds = holds(probe, 1e-6);
    long good = holds.stream().filter(h -> Math.abs(reading(h) - h.truth_m_s()) <= u95(h)).count();
    return (double) good / holds.size();
  }

  /** Mean stated band relative to the true speed over the moving holds. */
  static double meanU95(ScoredLog probe) {
    return holds(probe, 1e-6).stream()
        .mapToDouble(h -> u95(h) / h.truth_m_s())
        .average()
        .orElseThrow();
  }

  /** The same over the holds of the range that the error is stated for, 0.1 to 3 m/s. */
  static double usualU95(ScoredLog probe) {
    return holds(probe, LEAST_M_S).stream()
        .mapToDouble(h -> u95(h) / h.truth_m_s())
        .average()
        .orElseThrow();
  }

  static double reading(Hold hold) {
    return median(lastThird(hold).stream().mapToDouble(Row::speed_m_s).toArray());
  }

  static double u95(Hold hold) {
    return median(lastThird(hold).stream().mapToDouble(Row::u95_m_s).toArray());
  }

  private static List<Row> lastThird(Hold hold) {
    int size = hold.rows().size();
    return hold.rows().subList(size * 2 / 3, size);
  }

  private static List<Hold> holds(ScoredLog log, double least_m_s) {
    return log.holds().stream()
        .filter(h -> h.truth_m_s() >= least_m_s && h.truth_m_s() <= TOP_M_S)
        .toList();
  }

  /**
   * Relative errors of the means of whole minutes in which every row is unflagged, more than 60 s
   * after a step and none before the next, and whose true mean is at least 0.1 m/s.
   */
  static List<Double> fieldErrors(ScoredLog log) {
    List<Double> errors = new ArrayList<>();
    boolean steady = log.holds().size() > 3;
    double stepAt_s = Double.NEGATIVE_INFINITY;
    double minute = Double.NEGATIVE_INFINITY;
    double[] sums = new double[4];
    double before_m_s = log.rows().get(0).truth_m_s();
    for (Row row : log.rows()) {
      boolean stepped = steady && row.truth_m_s() != before_m_s;
      before_m_s = row.truth_m_s();
      stepAt_s = stepped ? row.time_s() : stepAt_s;
      double own = Math.floor(row.time_s() / MEAN_S);
      if (own != minute) {
        close(sums, errors);
        minute = own;
      }
      boolean counts = row.usable() && row.time_s() > stepAt_s + AFTER_STEP_S;
      sums[0] += row.speed_m_s();
      sums[1] += row.truth_m_s();
      sums[2]++;
      sums[3] += counts ? 0 : 1;
    }
    close(sums, errors);
    return errors;
  }

  private static void close(double[] sums, List<Double> errors) {
    if (sums[2] >= 2 && sums[3] == 0 && sums[1] / sums[2] >= LEAST_M_S) {
      errors.add(sums[0] / sums[1] - 1);
    }
    Arrays.fill(sums, 0);
  }

  /** Share of rows in still air that are unflagged and read more than their own band. */
  static double stillAsWind(List<ScoredLog> logs) {
    long still = 0;
    long wind = 0;
    for (ScoredLog log : logs) {
      double moved_s = Double.NEGATIVE_INFINITY;
      for (Row row : log.rows()) {
        moved_s = row.truth_m_s() != 0 ? row.time_s() : moved_s;
        if (row.time_s() > moved_s + AFTER_STEP_S) {
          still++;
          wind += row.usable() && row.speed_m_s() > row.u95_m_s() ? 1 : 0;
        }
      }
    }
    return (double) wind / still;
  }

  /** Lowest steady speed of which more than 80 % of rows are unflagged and right within 40 %. */
  static double floor(List<ScoredLog> logs) {
    double lowest = Double.POSITIVE_INFINITY;
    for (ScoredLog log : logs) {
      for (Hold hold : holds(log, 1e-6)) {
        List<Row> late = hold.rows().subList(hold.rows().size() / 5, hold.rows().size());
        long good =
            late.stream()
                .filter(Row::usable)
                .filter(r -> Math.abs(r.speed_m_s() / r.truth_m_s() - 1) <= 0.4)
                .count();
        if (good > 0.8 * late.size()) {
          lowest = Math.min(lowest, hold.truth_m_s());
        }
      }
    }
    return lowest;
  }

  /** Share of unflagged rows of steady speeds between two, settled, whose band holds the truth. */
  static double steadyWithin(List<ScoredLog> logs, double low_m_s, double high_m_s) {
    List<Row> rows = new ArrayList<>();
    for (ScoredLog log : logs) {
      for (Hold hold : holds(log, low_m_s - 1e-6)) {
        if (hold.truth_m_s() <= high_m_s + 1e-6) {
          rows.addAll(hold.rows().subList(hold.rows().size() / 3, hold.rows().size()));
        }
      }
    }
    List<Row> usable = rows.stream().filter(Row::usable).toList();
    long good =
        usable.stream().filter(r -> Math.abs(r.speed_m_s() - r.truth_m_s()) <= r.u95_m_s()).count();
    return (double) good / usable.size();
  }

  /** The same of every unflagged row from 0.1 m/s, against the true mean over a time about it. */
  static double averagedWithin(ScoredLog log, double average_s) {
    List<Row> rows = log.rows();
    long all = 0;
    long good = 0;
    int from = 0;
    int to = 0;
    double sum = 0;
    for (Row row : rows) {
      while (to < rows.size() && rows.get(to).time_s() <= row.time_s() + average_s / 2) {
        sum += rows.get(to++).truth_m_s();
      }
      while (rows.get(from).time_s() < row.time_s() - average_s / 2) {
        sum -= rows.get(from++).truth_m_s();
      }
      double truth_m_s = sum / (to - from);
      if (row.usable() && truth_m_s >= LEAST_M_S) {
        all++;
        good += Math.abs(row.speed_m_s() - truth_m_s) <= row.u95_m_s() ? 1 : 0;
      }
    }
    return (double) good / all;
  }

  /** Median time from 10 to 90 % of the steps of a log that was converted without averaging. */
  static double rise_s(ScoredLog log) {
    List<Hold> holds = log.holds();
    List<Double> rises = new ArrayList<>();
    for (int i = 1; i < holds.size(); i++) {
      if (i > 1 || holds.get(0).rows().stream().skip(300).allMatch(Row::usable)) {
        rises.add(rise_s(log, holds.get(i - 1), holds.get(i)));
      }
    }
    return median(rises.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static double rise_s(ScoredLog log, Hold from, Hold to) {
    double low = reading(from);
    double high = reading(to);
    double step_s = to.rows().get(0).time_s();
    double last10_s = Double.NEGATIVE_INFINITY;
    double first90_s = Double.POSITIVE_INFINITY;
    for (Row row : log.rows()) {
      double share = (row.speed_m_s() - low) / (high - low);
      if (row.time_s() < step_s - 120 || row.time_s() > step_s + 240) {
        continue;
      }
      if (share >= 0.9 && first90_s == Double.POSITIVE_INFINITY) {
        first90_s = row.time_s();
      }
      if (share <= 0.1 && first90_s == Double.POSITIVE_INFINITY) {
        last10_s = row.time_s();
      }
    }
    return first90_s - last10_s;
  }

  static double rms(List<Double> errors) {
    return Math.sqrt(errors.stream().mapToDouble(e -> e * e).average().orElseThrow());
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
