package faintwind.accuracy;

import faintwind.calibration.speed.LogAir;
import faintwind.calibration.speed.SpeedSettings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** All measures of one bench, relative ones as fractions. */
record BenchScore(String letter, ScoredLog probe, ScoredLog steps, ScoredLog gusts) {

  static BenchScore of(String letter, Path scratch) throws IOException {
    SampleBench bench = SampleBench.calibrated(letter, scratch);
    SpeedSettings unaveraged = new SpeedSettings(0, LogAir.UNKNOWN);
    return new BenchScore(
        letter,
        bench.log("probe", SpeedSettings.usual(bench.calibration())),
        bench.log("steps", unaveraged),
        bench.log("gusts", unaveraged));
  }

  double calibrationRms() {
    return FieldScores.calibrationRms(probe);
  }

  double within() {
    return FieldScores.within(probe);
  }

  double meanU95() {
    return FieldScores.meanU95(probe);
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
