package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.CANDIDATES;
import static faintwind.calibration.beat.OwnChoices.GAP_STEP;
import static faintwind.calibration.beat.OwnChoices.LONGEST_S;
import static faintwind.calibration.beat.OwnChoices.SHORTEST_S;
import static faintwind.calibration.beat.OwnChoices.WIDTHS;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Times between clicks that may be the beat: gaps between possible clicks, near or further apart,
 * that are more frequent than gaps a little shorter and longer.
 */
final class BeatPeriods {
  private static final int BINS = (int) (Math.log(LONGEST_S / SHORTEST_S) / GAP_STEP) + 1;

  private record Rated(double period_s, double rating) {}

  private BeatPeriods() {}

  /**
   * The shortest of those that stand out, since a multiple stands out as well; to what is expected,
   * where something is.
   */
  static List<Double> likely(List<ClickPeak> peaks, OptionalDouble expected_s) {
    double[] seen = gaps(peaks);
    List<Double> likely = new ArrayList<>();
    expected_s.ifPresent(likely::add);
    for (int width : WIDTHS) {
      double[] rating = rating(seen, width);
      List<Rated> crests = new ArrayList<>();
      for (int k = 1; k + 1 < BINS; k++) {
        double period_s = SHORTEST_S * Math.exp((k + 0.5) * GAP_STEP);
        boolean near =
            expected_s.isEmpty() || Math.abs(period_s / expected_s.getAsDouble() - 1) < 0.2;
        if (near && rating[k] > 2 && rating[k] >= rating[k - 1] && rating[k] >= rating[k + 1]) {
          crests.add(new Rated(period_s, rating[k]));
        }
      }
      double most = crests.stream().mapToDouble(Rated::rating).max().orElse(0);
      crests.stream()
          .filter(r -> r.rating() > most / 2)
          .limit(CANDIDATES)
          .map(Rated::period_s)
          .forEach(likely::add);
    }
    return likely;
  }

  /** Weighted number of gaps, in steps of equal ratio. */
  private static double[] gaps(List<ClickPeak> peaks) {
    double[] seen = new double[BINS];
    for (int i = 0; i < peaks.size(); i++) {
      for (int j = i + 1; j < peaks.size(); j++) {
        double gap_s = peaks.get(j).time_s() - peaks.get(i).time_s();
        if (gap_s >= LONGEST_S) {
          break;
        }
        if (gap_s >= SHORTEST_S) {
          double weight = Math.min(2, peaks.get(i).score()) * Math.min(2, peaks.get(j).score());
          seen[(int) (Math.log(gap_s / SHORTEST_S) / GAP_STEP)] += weight;
        }
      }
    }
    return seen;
  }

  /** By how many of its own standard deviations a gap is more frequent than those around it. */
  private static double[] rating(double[] seen, int width) {
    double[] sums = new double[BINS + 1];
    for (int k = 0; k < BINS; k++) {
      sums[k + 1] = sums[k] + seen[k];
    }
    double[] rating = new double[BINS];
    int wide = 12 * width;
    for (int k = 0; k < BINS; k++) {
      int from = Math.max(0, k - width);
      int to = Math.min(BINS, k + width + 1);
      int first = Math.max(0, k - wide);
      int last = Math.min(BINS, k + wide + 1);
      double here = sums[to] - sums[from];
      double around = sums[last] - sums[first] - here;
      double usual = around * (to - from) / Math.max(1, last - first - (to - from));
      rating[k] = (here - usual) / Math.sqrt(here + usual + 1);
    }
    return rating;
  }
}
