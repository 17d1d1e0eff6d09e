package faintwind.accuracy;

import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.SpeedSettings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** All measures of one bench, relative ones as fractions. */
record BenchScore(
    String letter, ScoredLog probe, ScoredLog steps, ScoredLog gusts, ScoredLog shortAverages) {
  /** Gear with coarse steps, jitter of 3 % or readings typed by hand. */
  static final Set<String> ROUGH = Set.of("d", "g", "i");

  private static final double SHORT_S = 10;

  static BenchScore of(String letter, Path scratch) throws IOException {
    SampleBench bench = SampleBench.calibrated(letter, scratch);
    SpeedSettings unaveraged = new SpeedSettings(0, LogAir.UNKNOWN);
    return new BenchScore(
        letter,
        bench.log("probe", SpeedSettings.usual(bench.calibration())),
        bench.log("steps", unaveraged),
        bench.log("gusts", unaveraged),
        bench.log("gusts", new SpeedSettings(SHORT_S, LogAir.UNKNOWN)));
  }

  double calibrationRms() {
    return FieldScores.calibrationRms(probe);
  }

  double meanError() {
    return FieldScores.meanError(probe);
  }

  double usualU95() {
    return FieldScores.usualU95(probe);
  }

  double within() {
    return FieldScores.within(probe);
  }

  double meanU95() {
    return FieldScores.meanU95(probe);
  }

  boolean rough() {
    return ROUGH.contains(letter);
  }

  /** Share of unflagged rows at slow speeds, 0.02 to 0.06 m/s or 0.05 to 0.15 m/s on rough gear. */
  double slowWithin() {
    double low = rough() ? 0.05 : 0.02;
    double high = rough() ? 0.15 : 0.06;
    return FieldScores.steadyWithin(List.of(probe, steps), low, high);
  }

  /** Share of unflagged rows in gusts whose band holds the true mean over ten seconds. */
  double shortWithin() {
    return FieldScores.averagedWithin(shortAverages, SHORT_S);
  }

  double stepsRms() {
    return FieldScores.rms(FieldScores.fieldErrors(steps));
  }

  double gustsRms() {
    return FieldScores.rms(FieldScores.fieldErrors(gusts));
  }

  double fieldRms() {
    List<Double> all = new ArrayList<>(FieldScores.fieldErrors(steps));
    all.addAll(FieldScores.fieldErrors(gusts));
    return FieldScores.rms(all);
  }

  double floor_m_s() {
    return FieldScores.floor(List.of(probe, steps));
  }

  double stillAsWind() {
    return FieldScores.stillAsWind(List.of(probe, steps));
  }

  double rise_s() {
    return FieldScores.rise_s(steps);
  }
}
