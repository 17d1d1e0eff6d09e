package faintwind.report.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Covariance;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Parameter;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.FormulaConstants;
import faintwind.calibration.response.Relations;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formulas as typed against those that the program works with, for every model. */
class RelationsTest {
  private static final AirState REFERENCE = new AirState(293.4, 99_800, 0.4);
  private static final AirState OTHER = new AirState(281.2, 93_000, 0.85);
  private static final List<String> PATH =
      List.of(
          "heating",
          "heater_share",
          "heater_time",
          "bead_time",
          "offset",
          "mismatch",
          "sensitivity_slope");
  private static final List<Double> PATH_VALUES = List.of(0.07, 0.03, 4.0, 2.0, -1.5, 0.02, 0.0019);

  @ParameterizedTest
  @CsvSource({
    "king-half, a b, 0.0016 0.004",
    "king, a b n, 0.0016 0.004 0.47",
    "mixed, a b n c m, 0.0011 0.004 0.49 0.0003 2.9",
    "mixed-linear, a b n c m r, 0.0011 0.004 0.49 0.0003 2.9 0.003",
    "physics-shaped, conduction forced natural leads radiation tilt mixing warmth,"
        + " 0.0006 1.02 0.95 0.0004 0.00005 0.006 3.1 1.2"
  })
  void typedFormulasGiveWhatTheProgramGives(String model, String names, String values) {
    FormulaFit fit = fit(model, List.of(names.split(" ")), List.of(values.split(" ")));
    SignalPath signal =
        new SignalPath(
            SignalUnit.SIGNAL_UV, SignalChain.AS_IS, Optional.of("T"), 40.2, OptionalDouble.of(5));
    Formula formula = Formula.of(fit, signal);
    Map<String, Double> known = known(fit, signal);
    List<String> air = List.of("air_C", "pressure_hPa", "rh_pct");
    ChainCode speed =
        ChainCode.of(Relations.speed(model), join(air, "loss_1_s", "delta_K"), "speed_m_s", known);
    ChainCode loss =
        ChainCode.of(Relations.loss(model), join(air, "speed_m_s", "delta_K"), "loss_1_s", known);
    ChainCode bead = ChainCode.of(Relations.speed(model), join(air, "signal"), "bead_K", known);
    for (double speed_m_s : new double[] {0.05, 0.3, 1, 3}) {
      for (double delta_K : new double[] {5, 20}) {
        double there = formula.loss_1_s(speed_m_s, delta_K, AirPoint.of(OTHER));
        double typed = loss.value(8.05, 930, 85, speed_m_s, delta_K);
        assertThat(typed).isCloseTo(there, within(1e-9 * there));
        assertThat(speed.value(8.05, 930, 85, there, delta_K))
            .isCloseTo(speed_m_s, within(1e-6 * speed_m_s));
        double read = formula.signal(delta_K, OTHER.temperature_K());
        assertThat(bead.value(8.05, 930, 85, read)).isCloseTo(delta_K, within(1e-9));
      }
    }
  }

  private static List<String> join(List<String> air, String... more) {
    List<String> all = new ArrayList<>(air);
    Collections.addAll(all, more);
    return all;
  }

  private static Map<String, Double> known(FormulaFit fit, SignalPath signal) {
    Map<String, Double> known = new HashMap<>();
    FormulaConstants.of(fit, signal).forEach((name, c) -> known.put(name, c.value()));
    fit.parameters().forEach(parameter -> known.put(parameter.name(), parameter.value()));
    return known;
  }

  private static FormulaFit fit(String model, List<String> names, List<String> values) {
    List<Parameter> parameters = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      parameters.add(new Parameter(names.get(i), Double.parseDouble(values.get(i)), 0.01, "1"));
    }
    for (int i = 0; i < PATH.size(); i++) {
      parameters.add(new Parameter(PATH.get(i), PATH_VALUES.get(i), 0.01, "1"));
    }
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < parameters.size(); i++) {
      List<Double> row = new ArrayList<>(Collections.nCopies(parameters.size(), 0.0));
      row.set(i, 1e-4);
      rows.add(row);
    }
    return new FormulaFit(
        model, "", parameters, Covariance.of(rows), REFERENCE, OptionalDouble.of(0.0127));
  }
}
