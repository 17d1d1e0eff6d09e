package faintwind.calibration.complete;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.response.ThermocoupleCurve;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Twenty inputs over the calibrated speeds, at rest and changing, in several airs and supplies,
 * with the speed that follows from them by the complete formula: bead and its lag, thermocouple,
 * air and supply. The inputs are rounded first, so that they are exactly those written.
 */
final class TestVectors {
  private static final int COUNT = 20;
  private static final MathContext SIX = new MathContext(6);

  /** Of the heating rate: at rest, warming, cooling. */
  private static final double[] RATES = {0, 0.2, -0.25};

  private static final double[] WARMER_K = {0, 6, -5, 12};
  private static final double[] PRESSURES_HPA = {1013.25, 950, 1030};
  private static final double[] HUMIDITIES_PCT = {50, 80, 20};
  private static final double[] SUPPLIES = {1, 1, 0.985, 1.02};

  private final Formula formula;
  private final double reference_K;
  private final OptionalDouble nominal_V;

  private TestVectors(Calibration calibration) {
    formula = Formula.of(calibration);
    reference_K = calibration.formula().referenceAir().temperature_K();
    nominal_V = calibration.signal().supply_V();
  }

  static List<TestVector> of(Calibration calibration) {
    TestVectors vectors = new TestVectors(calibration);
    double low = Math.log(calibration.coverage().lowest_m_s());
    double high = Math.log(calibration.coverage().highest_m_s());
    List<TestVector> all = new ArrayList<>();
    for (int i = 0; i < COUNT; i++) {
      all.add(vectors.about(i, Math.exp(low + (high - low) * i / (COUNT - 1))));
    }
    return all;
  }

  /** A vector whose speed is about the one asked for. */
  private TestVector about(int i, double wished_m_s) {
    double air_C = six(reference_K - Constants.ZERO_C_K + pick(WARMER_K, i));
    double pressure_hPa = pick(PRESSURES_HPA, i);
    double rh_pct = pick(HUMIDITIES_PCT, i);
    OptionalDouble supply_V =
        nominal_V.isPresent()
            ? OptionalDouble.of(six(nominal_V.getAsDouble() * pick(SUPPLIES, i)))
            : OptionalDouble.empty();
    AirPoint air =
        AirPoint.of(new AirState(air_C + Constants.ZERO_C_K, 100 * pressure_hPa, rh_pct / 100));
    ThermalPath path = formula.path();
    ThermocoupleCurve curve = path.curve();
    double p = formula.heating_K_s(supply_V);
    double rate_K_s = pick(RATES, i) * path.heating_K_s();
    double delta_K = delta_K(wished_m_s, p - rate_K_s, air);
    double bead_K = delta_K - path.beadTime_s() * rate_K_s;
    double signal = six(path.offset() + curve.signal(bead_K, air.air_K()));
    double rate = six(rate_K_s * curve.signalByDelta(bead_K, air.air_K()));
    double speed_m_s = speed_m_s(signal, rate, p, air);
    return new TestVector(signal, rate, air_C, pressure_hPa, rh_pct, supply_V, six(speed_m_s));
  }

  private double speed_m_s(double signal, double rate, double heating_K_s, AirPoint air) {
    double bead_K = formula.delta_K(signal, air.air_K());
    double rate_K_s = rate / formula.path().curve().signalByDelta(bead_K, air.air_K());
    double delta_K = bead_K + formula.path().beadTime_s() * rate_K_s;
    return formula.speed_m_s((heating_K_s - rate_K_s) / delta_K, delta_K, air);
  }

  /** The difference that loses so much at a speed, by bisection. */
  private double delta_K(double speed_m_s, double lost_K_s, AirPoint air) {
    double low = 0;
    double high = 300;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (formula.loss_1_s(speed_m_s, middle, air) * middle < lost_K_s) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double pick(double[] from, int i) {
    return from[i % from.length];
  }

  private static double six(double value) {
    return new BigDecimal(value).round(SIX).doubleValue();
  }
}
