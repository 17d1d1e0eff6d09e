package faintwind.calibration.beat;

import static faintwind.calibration.beat.OwnChoices.AFTER_FROM;
import static faintwind.calibration.beat.OwnChoices.AFTER_TO;
import static faintwind.calibration.beat.OwnChoices.APART;
import static faintwind.calibration.beat.OwnChoices.BEFORE;
import static faintwind.calibration.beat.OwnChoices.CLEAR;
import static faintwind.calibration.beat.OwnChoices.FAINT;
import static faintwind.calibration.beat.OwnChoices.RISE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds the clicks of a turning arm in a sound recording that is handed over piece by piece; memory
 * holds the latest minute and one entry for every possible click. Energy above 900 Hz and above
 * 2400 Hz is followed, where hum is gone and voices are fainter. A click is energy that rises at
 * once and is gone again within hundredths of a second: speech rises so too, but stays. Of all
 * candidates the chain is taken that keeps an even beat best ({@link ClickChain}), so that a click
 * under speech is found by its place and a slammed door is left out. The thresholds are own
 * choices; the studies over synthesised recordings say how well they do. Mutable; for one thread.
 */
public final class ClickFinder {
  private static final double[] CUTS_HZ = {900, 2400};
  private static final int FIRST = BEFORE + APART;
  private static final int LAST = AFTER_TO + RISE + APART;

  private final List<EnergyBins> bands;
  private final List<ClickPeak> peaks = new ArrayList<>();

  /** Number of the first bin that was not yet looked at. */
  private long next = BEFORE;

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
    for (int from = 0; from < count; from += EnergyBins.PIECE) {
      int to = Math.min(count, from + EnergyBins.PIECE);
      for (EnergyBins band : bands) {
        band.hear(samples, from, to);
      }
      if (bands.get(0).used() >= EnergyBins.FULL) {
        look(LAST);
        bands.forEach(band -> band.keepLast(FIRST + LAST));
      }
    }
  }

  /**
   * The clicks so far.
   *
   * @param expected_s about how far apart they should be, s; empty: found from the recording
   */
  public Found find(OptionalDouble expected_s) {
    look(AFTER_TO + RISE);
    List<ClickPeak> clear = peaks.stream().filter(p -> p.score() > CLEAR).toList();
    return ClickChain.best(peaks, expected_s)
        .map(
            chain ->
                new Found(
                    chain.peaks().stream().map(ClickPeak::time_s).toList(),
                    clear.stream().filter(p -> !chain.has(p)).map(ClickPeak::time_s).toList(),
                    chain.period_s()))
        .orElse(Found.NOTHING);
  }

  /** Looks for clicks in the bins not yet looked at, all but the last few. */
  private void look(int spared) {
    long dropped = bands.get(0).dropped();
    int count = bands.get(0).used();
    int end = count - AFTER_TO - RISE;
    double[] score = new double[Math.max(0, end)];
    int[] band = new int[score.length];
    List<double[]> sums = bands.stream().map(EnergyBins::sums).toList();
    for (int b = 0; b < bands.size(); b++) {
      double floor = 1e-9 * bands.get(b).mean() + 1e-30;
      double[] pieces = shortMeans(sums.get(b), floor);
      for (int k = BEFORE; k < end; k++) {
        double before = most(pieces, k - BEFORE, k - RISE);
        double after = most(pieces, k + AFTER_FROM, k + AFTER_TO);
        double here = Math.log(pieces[k] / Math.max(before, after));
        if (here > score[k]) {
          score[k] = here;
          band[k] = b;
        }
      }
    }
    int last = count - spared;
    for (int k = (int) (next - dropped); k < last; k++) {
      if (score[k] > FAINT && highest(score, k)) {
        double onset_s = (dropped + onset(sums.get(band[k]), k)) * EnergyBins.BIN_S;
        peaks.add(new ClickPeak(onset_s, score[k]));
      }
    }
    next = Math.max(next, dropped + last);
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
