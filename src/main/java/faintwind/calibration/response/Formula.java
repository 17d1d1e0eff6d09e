package faintwind.calibration.response;

import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.run.SignalPath;
import faintwind.physics.AirState;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * A fitted formula ready for use: a {@link ResponseModel} and a {@link ThermalPath} with their
 * numbers. Immutable; safe from any thread.
 *
 * <p>State model for an estimator: see {@link ThermalPath}. Parameter order: the loss parameters of
 * the model, then those of the path.
 */
public final class Formula {
  /**
   * Relative standard uncertainty of the loss of still air in the field: what may differ from the
   * calibration, by parts (own estimates, no source; docs/accuracy.md). The supply by a tenth of a
   * per cent of what its voltmeter says, so the heat by twice that; gain and zero of the chain,
   * 0.15 %; the balls' surface, dust and damp, 0.2 %; the reference ball, which follows the room
   * late and takes a little of the other's heat, 0.2 %: together 0.38 %. Temperature and pressure
   * of the air are measured, and what the formula makes of them is in its covariance; a log without
   * supply or air has terms of its own.
   */
  public static final double U_STILL_SINCE = 0.0038;

  private final ResponseModel model;
  private final double[] lossValues;
  private final ThermalPath path;
  private final OptionalDouble nominalSupply_V;

  private Formula(
      ResponseModel model, double[] lossValues, ThermalPath path, OptionalDouble nominalSupply_V) {
    this.model = model;
    this.lossValues = lossValues;
    this.path = path;
    this.nominalSupply_V = nominalSupply_V;
  }

  /** The formula of a calibration. */
  public static Formula of(Calibration calibration) {
    return of(calibration.formula(), calibration.signal());
  }

  /** The formula of a fit and its signal path. */
  public static Formula of(FormulaFit fit, SignalPath signal) {
    return of(fit, signal, fit.values());
  }

  /** The same formula with other parameter values, for draws from a covariance. */
  public static Formula of(FormulaFit fit, SignalPath signal, double[] values) {
    ResponseModel model = ResponseModel.of(fit.model(), fit.referenceAir(), fit.diameter_m());
    int losses = model.quantities().size();
    double reference_K = fit.referenceAir().temperature_K();
    double bend =
        signal.thermocouple().flatMap(TypeLetter::of).map(t -> t.bendAt(reference_K)).orElse(0.0);
    ThermalPath path =
        ThermalPath.of(
            Arrays.copyOfRange(values, losses, values.length),
            signal.perKelvin(),
            reference_K,
            bend);
    return new Formula(model, Arrays.copyOf(values, losses), path, signal.supply_V());
  }

  public ThermalPath path() {
    return path;
  }

  /** Heating rate p at a supply, K/s; at the nominal supply where none is recorded. */
  public double heating_K_s(OptionalDouble supply_V) {
    if (supply_V.isEmpty() || nominalSupply_V.isEmpty()) {
      return path.heating_K_s();
    }
    double ratio = supply_V.getAsDouble() / nominalSupply_V.getAsDouble();
    return path.heating_K_s() * ratio * ratio;
  }

  /** Difference of a signal as recorded, lag not undone, K. */
  public double delta_K(double signal, double air_K) {
    return path.curve().delta_K(signal - path.offset(), air_K);
  }

  /** Signal as recorded of a difference, K. */
  public double signal(double delta_K, double air_K) {
    return path.offset() + path.curve().signal(delta_K, air_K);
  }

  /** Loss G/C, 1/s. */
  public double loss_1_s(double speed_m_s, double delta_K, AirPoint air) {
    return derivatives(speed_m_s, delta_K, air)[0];
  }

  /** Loss (1/s), its change with speed, and its change with the difference, in this order. */
  public double[] lossAndSlopes(double speed_m_s, double delta_K, AirPoint air) {
    return Arrays.copyOf(derivatives(speed_m_s, delta_K, air), 3);
  }

  private double[] derivatives(double speed_m_s, double delta_K, AirPoint air) {
    double[] out = new double[3 + lossValues.length];
    model.loss(lossValues, speed_m_s, delta_K, air, out);
    return out;
  }

  /** Air speed at a loss and difference; 0 at or below the loss of still air. */
  public double speed_m_s(double loss_1_s, double delta_K, AirPoint air) {
    return model.speed_m_s(lossValues, loss_1_s, delta_K, air);
  }

  /** Air speed from the recorded signal where it has come to rest. */
  public double steadySpeed_m_s(double signal, OptionalDouble supply_V, AirPoint air) {
    double delta = delta_K(signal, air.air_K());
    return speed_m_s(heating_K_s(supply_V) / delta, delta, air);
  }

  /** Difference at which the heat balance rests at a speed, K, by Newton's method. */
  public double steadyDelta_K(double speed_m_s, OptionalDouble supply_V, AirPoint air) {
    double p = heating_K_s(supply_V);
    double delta = p / loss_1_s(speed_m_s, 10, air);
    for (int i = 0; i < 50; i++) {
      double[] loss = derivatives(speed_m_s, delta, air);
      double step = (loss[0] * delta - p) / (loss[0] + loss[2] * delta);
      delta = Math.max(0.1 * delta, delta - step);
      if (Math.abs(step) < 1e-10 * delta) {
        break;
      }
    }
    return delta;
  }

  /**
   * Change of the speed that is read from a signal at rest with each parameter, in the order of the
   * calibration file. Where the speed is so small that the loss does not change with it, the
   * entries are infinite or not a number: ask above the floor only.
   */
  public double[] steadySpeedGradient(double speed_m_s, OptionalDouble supply_V, AirPoint air) {
    double delta = steadyDelta_K(speed_m_s, supply_V, air);
    double[] loss = derivatives(speed_m_s, delta, air);
    int losses = lossValues.length;
    double[] gradient = new double[losses + ThermalPath.SLOPE + 1];
    for (int i = 0; i < losses; i++) {
      gradient[i] = -loss[3 + i] / loss[1];
    }
    double p = heating_K_s(supply_V);
    gradient[losses + ThermalPath.HEATING] = p / path.heating_K_s() / delta / loss[1];
    double byDelta = -(p / (delta * delta) + loss[2]) / loss[1];
    double perSignal = byDelta / path.curve().signalByDelta(delta, air.air_K());
    gradient[losses + ThermalPath.OFFSET] = -perSignal;
    gradient[losses + ThermalPath.SLOPE] =
        -perSignal * path.curve().signalBySlope(delta, air.air_K());
    return gradient;
  }

  /** Standard uncertainty of the speed read at rest, from the covariance of the parameters, m/s. */
  public double u_steady_m_s(
      double speed_m_s, OptionalDouble supply_V, AirState air, Covariance covariance) {
    double[] gradient = steadySpeedGradient(speed_m_s, supply_V, AirPoint.of(air));
    return Math.sqrt(covariance.variance(gradient));
  }
}
