package faintwind.calibration.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Covariance;
import faintwind.calibration.Coverage;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Parameter;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedFormulaTest {
  private static final SignalPath MILLIVOLTS =
      new SignalPath(
          SignalUnit.SIGNAL_MV, SignalChain.AS_IS, Optional.of("K"), 4.05, OptionalDouble.empty());

  @ParameterizedTest(name = "{0} at {1} m/s")
  @CsvSource({
    "physics-shaped, 0.1",
    "physics-shaped, 0.3",
    "physics-shaped, 1",
    "physics-shaped, 3",
    "king-half, 0.3",
    "king, 1",
    "mixed, 0.1",
    "mixed, 2",
    "mixed-linear, 0.2",
    "mixed-linear, 3"
  })
  void typedNumbersGiveTheSpeedOfTheFormula(String model, double speed_m_s) {
    FormulaFit fit = fit(model);
    Formula formula = Formula.of(fit, MILLIVOLTS);
    TypedFormula typed =
        TypedFormula.of(fit, MILLIVOLTS, new Coverage(0.1, 3, 20, 120, true, Optional.empty()));
    AirPoint air = AirPoint.of(AirState.ROOM);
    double rest_K = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), air);
    double delta = 1.1 * rest_K;
    double loss = formula.loss_1_s(speed_m_s, delta, air);
    double rate = formula.path().heating_K_s() - loss * delta;
    double read = typed.speed_m_s(formula.signal(delta, air.air_K()), rate);
    assertThat(read).isCloseTo(speed_m_s, within(0.004 * speed_m_s));
  }

  private static FormulaFit fit(String model) {
    List<ParameterPrior> quantities =
        new ArrayList<>(
            ResponseModel.of(model, AirState.ROOM, FormulaFit.USUAL_BALL_M).quantities());
    quantities.addAll(ThermalPath.quantities("mV"));
    List<Parameter> parameters =
        quantities.stream().map(q -> new Parameter(q.name(), q.prior(), 0, q.unit())).toList();
    int n = parameters.size();
    return new FormulaFit(
        model,
        "model." + model,
        parameters,
        Covariance.of(new double[n][n]),
        AirState.ROOM,
        OptionalDouble.empty());
  }
}
