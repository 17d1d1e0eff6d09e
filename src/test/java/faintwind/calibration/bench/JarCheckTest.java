package faintwind.calibration.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.files.calibration.CalibrationFile;
import faintwind.files.checklist.ChecklistFiles;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.physics.AirState;
import faintwind.physics.sheet.Outcome;
import faintwind.record.ReadingVerdict;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The jar check as the step judges it, against a calibration of the made-up cellar. */
class JarCheckTest {
  private static final Path FILE = Path.of("demo-projects/cellar/calibrations/2026-09-13.json");

  private final Calibration calibration;
  private final Reading delta;
  private final Map<String, Double> values = new HashMap<>();

  JarCheckTest() throws IOException {
    calibration = ok(CalibrationFile.read(FILE, "calibration.json"));
    Checklist checklist = ok(ChecklistFiles.shipped("standard"));
    delta =
        checklist.step("jar-check").orElseThrow().asks().readings().stream()
            .filter(r -> r.id().equals("jar-delta"))
            .findFirst()
            .orElseThrow();
    for (Outcome q : JarCheck.of(calibration)) {
      values.put(q.id().id(), q.value().nominal());
      values.put("low_" + q.id().id(), q.value().low());
      values.put("high_" + q.id().id(), q.value().high());
    }
  }

  private static <T> T ok(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems);
        });
  }

  /** What this instrument shows in a jar whose air has a temperature, at a supply. */
  private double shown_K(double air_C, OptionalDouble supply_V) {
    AirState air = calibration.formula().referenceAir().withTemperature(air_C + 273.15);
    return Formula.of(calibration).steadyDelta_K(0, supply_V, AirPoint.of(air));
  }

  private double shownUnder_K(double pressure_hPa) {
    AirState air = calibration.formula().referenceAir().withPressure(100 * pressure_hPa);
    return Formula.of(calibration)
        .steadyDelta_K(0, OptionalDouble.empty(), AirPoint.of(air.withTemperature(293.15)));
  }

  private ReadingVerdict judged(double delta_K, double air_C) {
    values.put("reading_jar_air", air_C);
    values.putIfAbsent("reading_jar_pressure", values.get("jar_pressure_hPa"));
    Amount amount = new Amount(delta_K, "K", Amount.Bound.EXACT, OptionalDouble.empty());
    return delta.judge(amount, values).orElseThrow().verdict();
  }

  @Test
  void instrumentAsCalibratedPassesInColdAndWarmAir() {
    for (double air_C : new double[] {8, 20, 32}) {
      assertThat(judged(shown_K(air_C, OptionalDouble.empty()), air_C))
          .as("%s °C", air_C)
          .isEqualTo(ReadingVerdict.GOOD);
    }
  }

  @Test
  void supplyOfFourAndAHalfVoltsForFiveFails() {
    double nominal_V = calibration.signal().supply_V().orElseThrow();
    double weak = shown_K(20, OptionalDouble.of(0.9 * nominal_V));
    assertThat(judged(weak, 20)).isEqualTo(ReadingVerdict.STOP);
  }

  @Test
  void instrumentThatReadsDoubleOrWithTheWrongSignFails() {
    double right = shown_K(20, OptionalDouble.empty());
    assertThat(judged(2 * right, 20)).isEqualTo(ReadingVerdict.STOP);
    assertThat(judged(-right, 20)).isEqualTo(ReadingVerdict.STOP);
    assertThat(judged(0.93 * right, 20)).isEqualTo(ReadingVerdict.DOUBTFUL);
  }

  @Test
  void airCounts() {
    double cold = shown_K(0, OptionalDouble.empty());
    double warm = shown_K(40, OptionalDouble.empty());
    assertThat(Math.abs(warm / cold - 1)).isGreaterThan(0.01);
    assertThat(values.get("jar_slope_K_K")).isCloseTo((warm - cold) / 40, within(0.02));
  }

  @Test
  void instrumentAsCalibratedPassesOnAMountainAndInTheLowlands() {
    for (double pressure_hPa : new double[] {700, 850, 960, 1040}) {
      values.put("reading_jar_pressure", pressure_hPa);
      assertThat(judged(shownUnder_K(pressure_hPa), 20))
          .as("%s hPa", pressure_hPa)
          .isEqualTo(ReadingVerdict.GOOD);
    }
  }

  @Test
  void pressureCountsOnAMountain() {
    values.put("reading_jar_pressure", 1013.25);
    assertThat(shownUnder_K(700) / shownUnder_K(1013.25)).isGreaterThan(1.05);
    assertThat(judged(shownUnder_K(700), 20)).isNotEqualTo(ReadingVerdict.GOOD);
  }

  @Test
  void aSignalWhoseScaleIsNotOnRecordSaysNothingOfKelvin() {
    SignalPath known = calibration.signal();
    SignalPath unknown =
        new SignalPath(
            known.unit(), SignalChain.AS_IS, Optional.empty(), known.perKelvin(), known.supply_V());
    assertThat(JarCheck.isInKelvin(known)).isTrue();
    assertThat(JarCheck.isInKelvin(unknown)).isFalse();
  }
}
