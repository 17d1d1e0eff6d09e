package faintwind.files.calibration;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildAgreement.Row;
import faintwind.calibration.BuildAgreement.Suspicion;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.BuildSuspect;
import faintwind.calibration.EnScore;
import java.util.List;
import java.util.Locale;

/** Whether the fit meets the build, with the keys of the file. */
record StoredAgreement(boolean agrees, List<Compared> compared, List<Suspect> suspects) {

  record Compared(
      String quantity, Amount fit, Amount build, String unit, double en, boolean judged) {}

  record Amount(double value, double standardUncertainty) {}

  record Suspect(String suspect, double factor, boolean explains, double weight) {}

  static StoredAgreement of(BuildAgreement agreement, String signalUnit) {
    return new StoredAgreement(
        !agreement.disagrees(),
        agreement.rows().stream().map(row -> compared(row, signalUnit)).toList(),
        agreement.suspects().stream()
            .map(s -> new Suspect(s.suspect().word(), s.factor(), s.explains(), s.weight()))
            .toList());
  }

  private static Compared compared(Row row, String signalUnit) {
    boolean ofSignal = row.quantity() == BuildQuantity.SIGNAL_PER_K;
    return new Compared(
        row.quantity().word(),
        new Amount(row.found(), row.u_found()),
        new Amount(row.says(), row.u_says()),
        ofSignal ? signalUnit + "/K" : row.quantity().unit(),
        row.en().value(),
        row.judged());
  }

  BuildAgreement toModel() {
    return new BuildAgreement(
        compared.stream()
            .map(
                c ->
                    new Row(
                        BuildQuantity.valueOf(constant(c.quantity())),
                        c.fit().value(),
                        c.fit().standardUncertainty(),
                        c.build().value(),
                        c.build().standardUncertainty(),
                        new EnScore(c.en()),
                        c.judged()))
            .toList(),
        suspects.stream()
            .map(
                s ->
                    new Suspicion(
                        BuildSuspect.valueOf(constant(s.suspect())),
                        s.factor(),
                        s.explains(),
                        s.weight()))
            .toList());
  }

  private static String constant(String word) {
    return word.toUpperCase(Locale.ROOT).replace('-', '_');
  }
}
