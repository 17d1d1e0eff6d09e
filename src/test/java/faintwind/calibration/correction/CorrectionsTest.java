package faintwind.calibration.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.correction.Correction.Source;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.Uncertain;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.run.RunsTable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CorrectionsTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");

  private static Calibration calibration() throws IOException {
    return CalibrationFile.read(CELLAR.resolve("calibrations/2026-09-13.json"), "calibration")
        .fold(
            (value, notes) -> value,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  /** Recordings of an instrument that reads exactly this share of the arm's speed. */
  private static RunSet beside(Calibration calibration, double share, double... arms_m_s) {
    Formula formula = Formula.of(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < arms_m_s.length; i++) {
      double delta_K =
          formula.steadyDelta_K(share * arms_m_s[i], calibration.signal().supply_V(), air);
      double signal = formula.signal(delta_K, air.air_K());
      Series series = Series.of(new double[] {0, 500, 1000}, new double[] {signal, signal, signal});
      double turnsTime_s = 20 * 2 * Math.PI * 0.6 / arms_m_s[i];
      runs.add(
          new Run(
              "beside" + i,
              RunKind.SPIN,
              "beside.csv",
              new Recording(
                  calibration.signal().unit(),
                  series,
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty()),
              RunConditions.NONE,
              Optional.of(
                  new ArmTurning(
                      Uncertain.of(0.6, 0.001),
                      20,
                      Uncertain.of(turnsTime_s, 0.3),
                      0,
                      1000,
                      Optional.empty())),
              Optional.empty()));
    }
    return new RunSet(runs, SignalChain.AS_IS, Optional.empty());
  }

  @Test
  void instrumentBesideTheArmReadsTheShareOfCarriedAir() throws IOException {
    Calibration calibration = calibration();
    List<BesideTheArm.Turned> turned =
        BesideTheArm.of(beside(calibration, 0.08, 1.5, 2.5, 3.0), calibration);
    assertThat(turned).allMatch(BesideTheArm.Turned::aboveFloor);
    Uncertain share =
        CarriedShare.of(turned.stream().map(BesideTheArm.Turned::reading).toList()).orElseThrow();
    assertThat(share.value()).isCloseTo(0.08, within(1e-4));
    assertThat(share.u().orElseThrow()).isBetween(1e-4, 0.01);
  }

  @Test
  void airBelowTheSmallestSpeedIsSaidToBe() throws IOException {
    Calibration calibration = calibration();
    assertThat(BesideTheArm.of(beside(calibration, 0.01, 0.5), calibration))
        .noneMatch(BesideTheArm.Turned::aboveFloor);
  }

  @Test
  void eachCorrectionOfTheDemoHasSizeAndUncertainty() throws IOException {
    Path table = CELLAR.resolve("runs");
    try (var files = java.nio.file.Files.walk(table)) {
      Path runs = files.filter(f -> f.endsWith("runs.csv")).sorted().findFirst().orElseThrow();
      RunSet set =
          RunsTable.read(runs)
              .fold(
                  (value, notes) -> value.runSet(),
                  problems -> {
                    throw new AssertionError(problems.toString());
                  });
      List<Correction> corrections = Corrections.of(set, calibration());
      assertThat(corrections)
          .extracting(Correction::source)
          .contains(Source.CARRIED, Source.RADIUS, Source.DRAUGHT, Source.AIR_STATE);
      Correction carried = corrections.get(0);
      assertThat(carried.size()).isBetween(-0.1, 0.0);
      assertThat(corrections).allMatch(c -> c.u() >= 0 && c.u() < 0.05);
    }
  }
}
