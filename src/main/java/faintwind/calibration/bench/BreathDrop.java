package faintwind.calibration.bench;

import faintwind.calibration.run.Series;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;

/**
 * The largest fall of a signal, averaged over five seconds, within a minute.
 *
 * @param from_s when it began, on the record's clock
 * @param drop how far it fell; 0 where it only rose
 */
public record BreathDrop(double from_s, double drop) {
  /** Finds it; refused where the record is shorter than half a minute. */
  public static Checked<BreathDrop> in(Series signal) {
    double length_s = signal.isEmpty() ? 0 : signal.last_s() - signal.first_s();
    if (length_s < OwnChoices.BREATH_LEAST_S) {
      return Checked.refused(
          Problem.error(
              "bench.breath-too-short",
              Where.NOWHERE,
              String.valueOf(Math.round(length_s)),
              String.valueOf(Math.round(OwnChoices.BREATH_LEAST_S))));
    }
    int parts = (int) (length_s / OwnChoices.BREATH_AVERAGE_S);
    double[] mean = new double[parts];
    for (int i = 0; i < parts; i++) {
      double from = signal.first_s() + i * OwnChoices.BREATH_AVERAGE_S;
      Series part = signal.window(from, from + OwnChoices.BREATH_AVERAGE_S);
      mean[i] = part.isEmpty() ? signal.at(from) : part.mean();
    }
    int reach = (int) (OwnChoices.BREATH_WITHIN_S / OwnChoices.BREATH_AVERAGE_S);
    BreathDrop largest = new BreathDrop(signal.first_s(), 0);
    for (int i = 0; i < parts; i++) {
      for (int j = i + 1; j < parts && j <= i + reach; j++) {
        if (mean[i] - mean[j] > largest.drop()) {
          largest =
              new BreathDrop(signal.first_s() + i * OwnChoices.BREATH_AVERAGE_S, mean[i] - mean[j]);
        }
      }
    }
    return Checked.ok(largest);
  }
}
