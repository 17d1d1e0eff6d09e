package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.LEAST_EVIDENCE;
import static faintwind.calibration.beat.OwnChoices.LOOK_AT;
import static faintwind.calibration.beat.OwnChoices.MISS;
import static faintwind.calibration.beat.OwnChoices.MOST_MISSED;
import static faintwind.calibration.beat.OwnChoices.OVER_CHANCE;
import static faintwind.calibration.beat.OwnChoices.SPREADS;
import static faintwind.calibration.beat.OwnChoices.SURE;
import static faintwind.calibration.beat.OwnChoices.UNSURE;
import static faintwind.calibration.beat.OwnChoices.WEIGHT;
import static faintwind.calibration.beat.OwnChoices.WIDER;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The candidates among a recording's clicks that keep an even beat best.
 *
 * @param peaks those of the beat, in order of time
 * @param period_s the usual time between them
 * @param evidence logarithm of how much likelier they are as clicks of an even beat than as noises
 *     that came by chance
 */
record ClickChain(List<ClickPeak> peaks, double period_s, double evidence) {
  ClickChain {
    peaks = List.copyOf(peaks);
  }

  boolean has(ClickPeak peak) {
    return Collections.binarySearch(peaks, peak, (a, b) -> Double.compare(a.time_s(), b.time_s()))
        >= 0;
  }

  /**
   * The chain with the most evidence over periods and over how unevenly the arm may be turned.
   * Period and unevenness come from the middle of a long recording. Empty where no chain has more
   * evidence than the same noises have once their times are shaken.
   *
   * @param expected_s about how far apart clicks should be; empty: found from the recording
   */
  static Optional<ClickChain> best(List<ClickPeak> peaks, OptionalDouble expected_s) {
    if (peaks.isEmpty()) {
      return Optional.empty();
    }
    int from = Math.max(0, (peaks.size() - LOOK_AT) / 2);
    List<ClickPeak> middle = peaks.subList(from, Math.min(peaks.size(), from + LOOK_AT));
    Optional<ClickChain> best = Optional.empty();
    double unevenness = 0;
    for (double period_s : BeatPeriods.likely(middle, expected_s)) {
      for (double spread : SPREADS) {
        ClickChain chain = through(middle, period_s, spread);
        if (best.isEmpty() || chain.evidence() > best.get().evidence()) {
          best = Optional.of(chain);
          unevenness = spread;
        }
      }
    }
    if (best.isEmpty()) {
      return best;
    }
    double finer_s = best.get().gap_s();
    for (double spread : SPREADS) {
      ClickChain chain = through(middle, finer_s, spread);
      if (chain.evidence() > best.get().evidence()) {
        best = Optional.of(chain);
        unevenness = spread;
      }
    }
    double chance = byChance(middle, best.get().period_s());
    return best.get().evidence() > LEAST_EVIDENCE + OVER_CHANCE * chance
        ? Optional.of(through(peaks, best.get().period_s(), unevenness * WIDER))
        : Optional.empty();
  }

  /** Most evidence of the same noises, each shaken by up to a third of a period. */
  private static double byChance(List<ClickPeak> peaks, double period_s) {
    List<ClickPeak> shaken = new ArrayList<>();
    for (int i = 0; i < peaks.size(); i++) {
      double share = Math.floorMod(i * 7919L, 1009) / 1009.0 - 0.5; // evenly spread, no pattern
      ClickPeak peak = peaks.get(i);
      shaken.add(new ClickPeak(peak.time_s() + share * 2 / 3 * period_s, peak.score()));
    }
    shaken.sort(Comparator.comparingDouble(ClickPeak::time_s));
    return Arrays.stream(SPREADS)
        .map(spread -> through(shaken, period_s, spread).evidence())
        .max()
        .orElse(0);
  }

  /** Median time of a step. */
  private double gap_s() {
    double[] gaps = new double[peaks.size() - 1];
    for (int i = 0; i < gaps.length; i++) {
      double gap_s = peaks.get(i + 1).time_s() - peaks.get(i).time_s();
      gaps[i] = gap_s / Math.max(1, Math.rint(gap_s / period_s));
    }
    return gaps.length == 0 ? period_s : new Median().evaluate(gaps);
  }

  /**
   * The chain of peaks with the most evidence at a period and an unevenness, by dynamic
   * programming. A click is worth what its score says and how much likelier it is to come so near
   * to its time as a click than by chance; a click that does not come costs.
   */
  static ClickChain through(List<ClickPeak> peaks, double period_s, double spread) {
    int count = peaks.size();
    double lasts_s = Math.max(1, peaks.get(count - 1).time_s() - peaks.get(0).time_s());
    double chance = count / lasts_s * period_s * spread * Math.sqrt(2 * Math.PI);
    double[] best = new double[count];
    int[] before = new int[count];
    int last = 0;
    int open = 0;
    for (int i = 0; i < count; i++) {
      double worth = worth(peaks.get(i));
      best[i] = worth;
      before[i] = -1;
      double reach_s = peaks.get(i).time_s() - (MOST_MISSED + 1) * period_s;
      while (peaks.get(open).time_s() < reach_s) {
        open++;
      }
      for (int j = i - 1; j >= open; j--) {
        double steps = (peaks.get(i).time_s() - peaks.get(j).time_s()) / period_s;
        double value = best[j] + worth - cost(steps, spread) - Math.log(chance);
        if (value > best[i]) {
          best[i] = value;
          before[i] = j;
        }
      }
      last = best[i] > best[last] ? i : last;
    }
    List<ClickPeak> chain = new ArrayList<>();
    for (int i = last; i >= 0; i = before[i]) {
      chain.add(peaks.get(i));
    }
    Collections.reverse(chain);
    return new ClickChain(chain, period_s, best[last]);
  }

  private static double worth(ClickPeak peak) {
    return Math.min(SURE, WEIGHT * peak.score()) - UNSURE;
  }

  private static double cost(double steps, double spread) {
    double whole = Math.rint(steps);
    if (whole < 1) {
      return Double.POSITIVE_INFINITY;
    }
    double off = (steps - whole) / spread;
    return (off * off / whole + Math.log(whole)) / 2 + MISS * (whole - 1);
  }
}
