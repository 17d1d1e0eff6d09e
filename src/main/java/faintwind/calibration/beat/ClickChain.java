package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.FAR;
import static faintwind.calibration.beat.OwnChoices.GAP_BIN_S;
import static faintwind.calibration.beat.OwnChoices.LOOSE;
import static faintwind.calibration.beat.OwnChoices.MISS;
import static faintwind.calibration.beat.OwnChoices.MOST_MISSED;
import static faintwind.calibration.beat.OwnChoices.NEIGHBOURS;
import static faintwind.calibration.beat.OwnChoices.SPREADS;
import static faintwind.calibration.beat.OwnChoices.SURE;
import static faintwind.calibration.beat.OwnChoices.TIGHTEST;
import static faintwind.calibration.beat.OwnChoices.WEIGHT;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/** The candidates among a recording's clicks that keep an even beat best. */
final class ClickChain {
  private ClickChain() {}

  /**
   * A candidate.
   *
   * @param time_s when
   * @param score logarithm of its energy over that around it
   */
  record Peak(double time_s, double score) {}

  /**
   * The usual time between clicks: the shortest gap that is nearly as frequent as the most frequent
   * one, since twice the gap is as frequent; refined by the median of the gaps like it. Empty where
   * there are too few candidates.
   */
  static OptionalDouble period_s(List<Peak> clear, double shortest_s, double longest_s) {
    double[] seen = new double[(int) (longest_s / GAP_BIN_S) + 2];
    List<Double> gaps = new ArrayList<>();
    for (int i = 0; i < clear.size(); i++) {
      for (int j = i + 1; j < Math.min(clear.size(), i + NEIGHBOURS); j++) {
        double gap_s = clear.get(j).time_s() - clear.get(i).time_s();
        if (gap_s > longest_s) {
          break;
        }
        if (gap_s >= shortest_s) {
          gaps.add(gap_s);
          seen[(int) (gap_s / GAP_BIN_S)] += 1;
        }
      }
    }
    double[] near = new double[seen.length];
    for (int k = 0; k < seen.length; k++) {
      int reach = 1 + (int) (0.03 * k);
      for (int i = Math.max(0, k - reach); i <= Math.min(seen.length - 1, k + reach); i++) {
        near[k] += seen[i];
      }
    }
    double most = Arrays.stream(near).max().orElse(0);
    if (most < 2) {
      return OptionalDouble.empty();
    }
    int shortest = 0;
    while (near[shortest] < 0.6 * most) {
      shortest++;
    }
    while (shortest + 1 < near.length && near[shortest + 1] > near[shortest]) {
      shortest++;
    }
    double about_s = (shortest + 0.5) * GAP_BIN_S;
    double[] like =
        gaps.stream().mapToDouble(g -> g).filter(g -> Math.abs(g / about_s - 1) < 0.08).toArray();
    return OptionalDouble.of(new Median().evaluate(like));
  }

  /**
   * The chain of peaks with the greatest sum of scores less what uneven or missing steps cost; how
   * uneven this hand is comes from a first, loose chain.
   */
  static List<Peak> through(List<Peak> peaks, double period_s) {
    List<Peak> first = through(peaks, period_s, LOOSE);
    return through(peaks, period_s, Math.min(LOOSE, Math.max(TIGHTEST, SPREADS * spread(first))));
  }

  /** Relative spread of the gaps by their median distance from their median. */
  private static double spread(List<Peak> chain) {
    double[] gaps = new double[Math.max(0, chain.size() - 1)];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = chain.get(i + 1).time_s() - chain.get(i).time_s();
    }
    if (gaps.length == 0) {
      return LOOSE;
    }
    double middle = new Median().evaluate(gaps);
    double[] off = Arrays.stream(gaps).map(g -> Math.abs(g / middle - 1)).toArray();
    return 1.48 * new Median().evaluate(off);
  }

  private static List<Peak> through(List<Peak> peaks, double period_s, double tolerance) {
    int count = peaks.size();
    double[] best = new double[count];
    int[] before = new int[count];
    int last = -1;
    for (int i = 0; i < count; i++) {
      best[i] = gain(peaks.get(i));
      before[i] = -1;
      for (int j = i - 1; j >= 0; j--) {
        double gap_s = peaks.get(i).time_s() - peaks.get(j).time_s();
        if (gap_s > (MOST_MISSED + 1) * period_s) {
          break;
        }
        double value = best[j] + gain(peaks.get(i)) - cost(gap_s / period_s, tolerance);
        if (value > best[i]) {
          best[i] = value;
          before[i] = j;
        }
      }
      if (last < 0 || best[i] > best[last]) {
        last = i;
      }
    }
    List<Peak> chain = new ArrayList<>();
    for (int i = last; i >= 0; i = before[i]) {
      chain.add(peaks.get(i));
    }
    Collections.reverse(chain);
    return chain;
  }

  private static double gain(Peak peak) {
    return Math.min(SURE, WEIGHT * peak.score());
  }

  private static double cost(double steps, double tolerance) {
    double whole = Math.rint(steps);
    if (whole < 1) {
      return Double.POSITIVE_INFINITY;
    }
    double off = (steps - whole) / (tolerance * Math.sqrt(whole));
    return FAR * off * off + MISS * (whole - 1);
  }
}
