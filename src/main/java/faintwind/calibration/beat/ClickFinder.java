package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.AFTER_FROM;
import static faintwind.calibration.beat.OwnChoices.AFTER_TO;
import static faintwind.calibration.beat.OwnChoices.APART;
import static faintwind.calibration.beat.OwnChoices.BEFORE;
import static faintwind.calibration.beat.OwnChoices.CLEAR;
import static faintwind.calibration.beat.OwnChoices.FAINT;
import static faintwind.calibration.beat.OwnChoices.LONGEST_S;
import static faintwind.calibration.beat.OwnChoices.RISE;
import static faintwind.calibration.beat.OwnChoices.SHORTEST_S;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds the clicks of a turning arm in a sound recording that is handed over piece by piece; memory
 * grows by two numbers a millisecond. Energy above 900 Hz and above 2400 Hz is followed, where hum
 * is gone and voices are fainter. A click is energy that rises at once and is gone again within
 * hundredths of a second: speech rises so too, but stays. Of all candidates the chain is taken that
 * keeps an even beat best (dynamic programming), so that a click under speech is found by its place
 * and a slammed door is left out. The thresholds are own choices; the test against synthesised
 * recordings says how well they do. Mutable; for one thread.
 */
public final class ClickFinder {
  private static final double[] CUTS_HZ = {900, 2400};
  private final List<EnergyBins> bands;

  /**
   * A finder for a recording.
   *
   * @param rate_Hz samples a second, 8000 to 192 000
   */
  public ClickFinder(int rate_Hz) {
    if (rate_Hz < 8000 || rate_Hz > 192_000) {
      throw new IllegalArgumentException("rate_Hz = " + rate_Hz + ", allowed 8000 to 192000");
    }
    bands = Arrays.stream(CUTS_HZ).mapToObj(cut -> new EnergyBins(cut, rate_Hz)).toList();
  }

  /**
   * What was found.
   *
   * @param clicks times of the clicks that keep the beat, s
   * @param setAside times of clear clicks that do not, s: doubled clicks, knocks
   * @param period_s usual time between clicks, s
   */
  public record Found(List<Double> clicks, List<Double> setAside, double period_s) {
    static final Found NOTHING = new Found(List.of(), List.of(), 0);

    public Found {
      clicks = List.copyOf(clicks);
      setAside = List.copyOf(setAside);
    }
  }

  /** Takes the next samples, of any scale. */
  public void hear(float[] samples, int count) {
    bands.forEach(band -> band.hear(samples, count));
  }

  /**
   * The clicks so far.
   *
   * @param expected_s about how far apart they should be, s; empty: found from the recording
   */
  public Found find(OptionalDouble expected_s) {
    List<ClickChain.Peak> peaks = peaks(bands.stream().map(EnergyBins::sums).toList());
    List<ClickChain.Peak> clear = peaks.stream().filter(p -> p.score() > CLEAR).toList();
    OptionalDouble period_s =
        expected_s.isPresent() ? expected_s : ClickChain.period_s(clear, SHORTEST_S, LONGEST_S);
    if (period_s.isEmpty()) {
      return Found.NOTHING;
    }
    List<ClickChain.Peak> chain = ClickChain.through(peaks, period_s.getAsDouble());
    List<Double> others =
        clear.stream().filter(p -> !chain.contains(p)).map(ClickChain.Peak::time_s).toList();
    return new Found(
        chain.stream().map(ClickChain.Peak::time_s).toList(), others, period_s.getAsDouble());
  }

  private static List<ClickChain.Peak> peaks(List<double[]> bands) {
    int count = bands.get(0).length - 1;
    double[] score = new double[count];
    int[] band = new int[count];
    for (int b = 0; b < bands.size(); b++) {
      double[] sums = bands.get(b);
      double floor = 1e-9 * (sums[count] / Math.max(1, count)) + 1e-30;
      double[] pieces = shortMeans(sums, floor);
      for (int k = BEFORE; k < count - AFTER_TO - RISE; k++) {
        double before = most(pieces, k - BEFORE, k - RISE);
        double after = most(pieces, k + AFTER_FROM, k + AFTER_TO);
        double here = Math.log(pieces[k] / Math.max(before, after));
        if (here > score[k]) {
          score[k] = here;
          band[k] = b;
        }
      }
    }
    List<ClickChain.Peak> peaks = new ArrayList<>();
    for (int k = BEFORE; k < count - AFTER_TO - RISE; k++) {
      if (score[k] > FAINT && highest(score, k)) {
        double onset_s = onset(bands.get(band[k]), k) * EnergyBins.BIN_S;
        peaks.add(new ClickChain.Peak(onset_s, score[k]));
      }
    }
    return peaks;
  }

  /** Mean energy of the few milliseconds from each bin on. */
  private static double[] shortMeans(double[] sums, double floor) {
    double[] means = new double[Math.max(0, sums.length - RISE)];
    for (int k = 0; k < means.length; k++) {
      means[k] = mean(sums, k, k + RISE) + floor;
    }
    return means;
  }

  /** A voice rings anew with each pulse: the strongest piece nearby, not the mean, is beaten. */
  private static double most(double[] pieces, int from, int to) {
    double most = pieces[from];
    for (int i = from + 1; i < to; i++) {
      most = Math.max(most, pieces[i]);
    }
    return most;
  }

  private static boolean highest(double[] score, int k) {
    for (int i = Math.max(0, k - APART); i <= Math.min(score.length - 1, k + APART); i++) {
      if (score[i] > score[k] || (score[i] == score[k] && i < k)) {
        return false;
      }
    }
    return true;
  }

  /** The bin near a peak at which the energy steps up most, from the two before to the two from. */
  private static int onset(double[] sums, int k) {
    int best = k;
    double most = 0;
    for (int i = Math.max(2, k - 3); i <= Math.min(sums.length - 3, k + RISE); i++) {
      double step = mean(sums, i, i + 2) - mean(sums, i - 2, i);
      if (step > most) {
        most = step;
        best = i;
      }
    }
    return best;
  }

  private static double mean(double[] sums, int from, int to) {
    return (sums[to] - sums[from]) / (to - from);
  }
}
