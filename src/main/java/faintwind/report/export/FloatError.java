package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.calibration.complete.TestVector;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How far the formula in single precision, with every intermediate number rounded to it, is from
 * that in double precision.
 */
final class FloatError {
  private static final int SPEEDS = 60;

  private final ExportedFormula exported;
  private final ChainCode bead;
  private final ChainCode speed;
  private final Map<String, Double> numbers;

  private FloatError(ExportedFormula exported) {
    this.exported = exported;
    bead = exported.bead();
    speed = exported.speed();
    numbers = exported.numbers();
  }

  /** The largest relative difference over the calibrated speeds at rest and the test vectors. */
  static double of(ExportedFormula exported) {
    FloatError error = new FloatError(exported);
    Calibration calibration = exported.calibration();
    AirState air = calibration.formula().referenceAir();
    Formula formula = Formula.of(calibration);
    double worst = 0;
    double low = Math.log(calibration.coverage().lowest_m_s());
    double high = Math.log(calibration.coverage().highest_m_s());
    for (int i = 0; i < SPEEDS; i++) {
      double speed_m_s = Math.exp(low + (high - low) * i / (SPEEDS - 1));
      double delta_K = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), AirPoint.of(air));
      double signal = (float) formula.signal(delta_K, air.temperature_K());
      TestVector at =
          new TestVector(
              signal,
              0,
              air.temperature_K() - Constants.ZERO_C_K,
              air.pressure_Pa() / 100,
              100 * air.relativeHumidity(),
              OptionalDouble.empty(),
              speed_m_s);
      worst = Math.max(worst, error.at(at));
    }
    for (TestVector vector : exported.complete().testVectors()) {
      worst = Math.max(worst, error.at(vector));
    }
    return worst;
  }

  private double at(TestVector vector) {
    return Math.abs(speed_m_s(vector, Precision.FLOAT) / speed_m_s(vector, Precision.DOUBLE) - 1);
  }

  private enum Precision {
    FLOAT,
    DOUBLE
  }

  private double speed_m_s(TestVector v, Precision precision) {
    double[] air = {v.air_C(), v.pressure_hPa(), v.rh_pct()};
    double air_K = value(precision, exported.air().get(0), air[0]);
    double nu_300 = value(precision, exported.air().get(1), air);
    double nu_air = value(precision, exported.air().get(2), air_K, nu_300);
    double bead_K = value(precision, bead, v.signal(), air_K);
    double nominal_V = number("nominal_supply_V");
    double ratio = v.supply_V().orElse(nominal_V) / nominal_V;
    double d = air_K + bead_K - number("reference_K");
    double perKelvin =
        number("signal_per_K")
            * (1 + d * (number("sensitivity_slope") + d * number("sensitivity_bend")));
    double rate_K_s = v.rate() / perKelvin;
    double delta_K = bead_K + number("bead_time") * rate_K_s;
    double loss_1_s = (number("heating") * ratio * ratio - rate_K_s) / delta_K;
    return value(precision, speed, loss_1_s, delta_K, air_K, nu_300, nu_air);
  }

  private static double value(Precision precision, ChainCode code, double... inputs) {
    return precision == Precision.FLOAT ? code.floatValue(inputs) : code.value(inputs);
  }

  private double number(String name) {
    return numbers.getOrDefault(name, 0.0);
  }
}
