package faintwind.guide.turntable;

import static faintwind.guide.turntable.OwnChoices.BEFORE_S;
import static faintwind.guide.turntable.OwnChoices.RIPPLE_LEAST;
import static faintwind.guide.turntable.OwnChoices.RIPPLE_OVER_NOISE;
import static faintwind.guide.turntable.OwnChoices.RIPPLE_SHARE;
import static faintwind.guide.turntable.OwnChoices.SHOULD_MOVE;
import static faintwind.guide.turntable.OwnChoices.STANDS_ROWS;
import static faintwind.guide.turntable.OwnChoices.STANDS_S;
import static faintwind.guide.turntable.OwnChoices.SUPPLY_CHANGE;
import static faintwind.guide.turntable.OwnChoices.SUPPLY_FIRST;
import static faintwind.guide.turntable.OwnChoices.SUPPLY_NOW;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * What the last rows alone show: a signal at its stop, the mains in it, a supply that is not what
 * it was. All limits are own choices, tried on virtual recordings. Mutable; for one thread.
 */
final class RowTroubles {
  private double quiet = Double.POSITIVE_INFINITY;
  private final double[] firstSupplies_V = new double[SUPPLY_FIRST];
  private int supplyCount;
  private double supplyNow;

  /** The heater was switched on anew: the supply that counts is that of the next readings. */
  void heaterOn() {
    supplyCount = 0;
  }

  void supply(OptionalDouble supply_V) {
    if (supply_V.isEmpty()) {
      return;
    }
    if (supplyCount < SUPPLY_FIRST) {
      firstSupplies_V[supplyCount] = supply_V.getAsDouble();
      supplyCount++;
      supplyNow = supply_V.getAsDouble();
    } else {
      supplyNow += SUPPLY_NOW * (supply_V.getAsDouble() - supplyNow);
    }
  }

  /**
   * What is wrong now.
   *
   * @param scale signal in still air, for the least ripple that matters
   */
  List<Trouble> now(SignalHistory history, double scale) {
    List<Trouble> found = new ArrayList<>();
    double noise = history.noise();
    stands(history).ifPresent(found::add);
    mains(history, noise, scale).ifPresent(found::add);
    if (noise > 0) {
      quiet = Math.min(quiet, noise);
    }
    double before_V = supplyBefore_V();
    if (before_V > 0 && Math.abs(supplyNow / before_V - 1) > SUPPLY_CHANGE) {
      found.add(Trouble.of(Trouble.Kind.SUPPLY_CHANGED, before_V, supplyNow));
    }
    return found;
  }

  /** Median of the first readings, of which one or two may come from before the switch; else 0. */
  private double supplyBefore_V() {
    if (supplyCount < SUPPLY_FIRST) {
      return 0;
    }
    return new Median().evaluate(firstSupplies_V);
  }

  /** A signal that moved and then stands still to the last digit, as none settles. */
  private static Optional<Trouble> stands(SignalHistory history) {
    double stood_s = history.unchanged_s();
    if (stood_s < STANDS_S || history.unchangedRows() < STANDS_ROWS) {
      return Optional.empty();
    }
    double since_s = history.last_s() - stood_s;
    SimpleRegression before = history.line(since_s - BEFORE_S, since_s - 1);
    if (before.getN() < STANDS_ROWS) {
      return Optional.empty();
    }
    double spread = Math.sqrt(Math.max(0, before.getMeanSquareError()));
    double moves = Math.abs(before.getSlope()) * Math.min(stood_s, BEFORE_S);
    return moves > SHOULD_MOVE * Math.max(spread, history.resolution())
        ? Optional.of(Trouble.of(Trouble.Kind.SATURATED, history.last()))
        : Optional.empty();
  }

  /** A single line in the spectrum of the rows' second differences, in which trends are gone. */
  private Optional<Trouble> mains(SignalHistory history, double noise, double scale) {
    double[] rows = history.lastRows(SignalHistory.ROWS);
    boolean large =
        noise > RIPPLE_LEAST * Math.abs(scale)
            || (noise > RIPPLE_OVER_NOISE * quiet && noise > RIPPLE_LEAST / 4 * Math.abs(scale));
    if (rows.length < SignalHistory.ROWS || !large) {
      return Optional.empty();
    }
    int n = rows.length - 2;
    double[] power = new double[n / 2 + 1];
    double sum = 0;
    for (int k = 1; k < power.length; k++) {
      double re = 0;
      double im = 0;
      for (int i = 0; i < n; i++) {
        double bend = rows[i + 2] - 2 * rows[i + 1] + rows[i];
        double window = Math.sin(Math.PI * (i + 0.5) / n);
        re += window * bend * Math.cos(2 * Math.PI * k * i / n);
        im += window * bend * Math.sin(2 * Math.PI * k * i / n);
      }
      power[k] = re * re + im * im;
      sum += power[k];
    }
    int top = 1;
    for (int k = 2; k < power.length; k++) {
      top = power[k] > power[top] ? k : top;
    }
    double line = power[top] + power[top - 1] + (top + 1 < power.length ? power[top + 1] : 0);
    return line < RIPPLE_SHARE * sum
        ? Optional.empty()
        : Optional.of(Trouble.of(Trouble.Kind.MAINS, noise, n * history.rowStep_s() / top));
  }
}
