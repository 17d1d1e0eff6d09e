package faintwind.calibration.bench;

import faintwind.calibration.run.Series;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The signal's change in the first two minutes after the heater was switched on: the moment is
 * where a level and then a straight rise (or fall) explain the largest share of the variance up to
 * two minutes after it.
 *
 * @param on_s when it was switched on, on the record's clock
 * @param change of the signal from the level before to two minutes after
 */
public record HeaterOn(double on_s, double change) {
  /** How long after switching on the change is taken, s: as the step says. */
  public static final double AFTER_S = 120;

  /** Finds the moment; refused where the record is too short for a level and two minutes. */
  public static Checked<HeaterOn> in(Series signal) {
    double first = signal.isEmpty() ? 0 : signal.first_s() + OwnChoices.LEAST_BEFORE_S;
    double last = signal.isEmpty() ? 0 : signal.last_s() - AFTER_S;
    if (last < first) {
      double length_s = signal.isEmpty() ? 0 : signal.last_s() - signal.first_s();
      return Checked.refused(
          Problem.error(
              "bench.rise-too-short",
              Where.NOWHERE,
              String.valueOf(Math.round(length_s)),
              String.valueOf(Math.round(OwnChoices.LEAST_BEFORE_S + AFTER_S))));
    }
    double best_s = first;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < OwnChoices.CANDIDATES; i++) {
      double tried_s = first + (last - first) * i / (OwnChoices.CANDIDATES - 1);
      double cost = cost(signal, tried_s);
      if (cost < least) {
        least = cost;
        best_s = tried_s;
      }
    }
    double level = signal.window(signal.first_s(), best_s).mean();
    double end = signal.window(best_s + AFTER_S - OwnChoices.END_S, best_s + AFTER_S).mean();
    return Checked.ok(new HeaterOn(best_s, end - level));
  }

  /**
   * Share of the variance that the level before and the line after leave; a rise is cut at two
   * minutes, where it is still straight enough.
   */
  private static double cost(Series signal, double on_s) {
    Series before = signal.window(signal.first_s(), on_s);
    Series after = signal.window(on_s, on_s + AFTER_S);
    if (before.isEmpty() || after.size() < 3) {
      return Double.POSITIVE_INFINITY;
    }
    double level = before.mean();
    double sum = 0;
    for (int i = 0; i < before.size(); i++) {
      sum += square(before.value(i) - level);
    }
    double slope = slope(after, on_s, level);
    for (int i = 0; i < after.size(); i++) {
      sum += square(after.value(i) - level - slope * (after.time_s(i) - on_s));
    }
    Series all = signal.window(signal.first_s(), on_s + AFTER_S);
    double mean = all.mean();
    double variance = 0;
    for (int i = 0; i < all.size(); i++) {
      variance += square(all.value(i) - mean);
    }
    return variance == 0 ? 1 : sum / variance;
  }

  /** Least-squares slope of a line that begins at the level. */
  private static double slope(Series after, double on_s, double level) {
    SimpleRegression line = new SimpleRegression(false);
    for (int i = 0; i < after.size(); i++) {
      line.addData(after.time_s(i) - on_s, after.value(i) - level);
    }
    return line.getSlope();
  }

  private static double square(double x) {
    return x * x;
  }
}
