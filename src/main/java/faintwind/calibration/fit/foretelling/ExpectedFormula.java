package faintwind.calibration.fit.foretelling;

import faintwind.calibration.Covariance;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Parameter;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ThermalPath;
import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The physics-shaped formula as it is expected before any run. Two time constants settle it: the
 * conduction limit c and what leads and radiation take, r, follow from 1/τ = c f(U) + r in still
 * air and at 1 m/s, where f is the convection of the published correlations over its limit.
 */
final class ExpectedFormula {
  private static final int CONDUCTION = 0;
  private static final int LEADS = 3;
  private static final int RADIATION = 4;

  /** What leads and radiation take at least, 1/s: a published correlation may be a tenth off. */
  private static final double LEAST_REST_1_S = 5e-5;

  private static final double BREEZE_M_S = 1;

  private static final AirPoint AIR = AirPoint.of(AirState.ROOM);

  private final List<ParameterPrior> quantities = new ArrayList<>();
  private final double[] values;
  private final int losses;
  private final Formula formula;
  private final Map<Double, double[]> gradients = new HashMap<>();

  ExpectedFormula(ExpectedResponse expected) {
    PhysicsShaped model = new PhysicsShaped(AirState.ROOM);
    losses = model.quantities().size();
    quantities.addAll(model.quantities());
    quantities.addAll(ThermalPath.quantities(Setting.EXPECTED_SIGNAL.unit().symbol()));
    values = quantities.stream().mapToDouble(ParameterPrior::prior).toArray();
    double breeze_K = expected.still_K() * expected.breeze_s() / expected.still_s();
    double still = convection(model, 0, expected.still_K());
    double moved = convection(model, BREEZE_M_S, breeze_K);
    double conduction = (1 / expected.breeze_s() - 1 / expected.still_s()) / (moved - still);
    double rest = Math.max(LEAST_REST_1_S, 1 / expected.still_s() - conduction * still);
    values[CONDUCTION] = conduction;
    values[RADIATION] = Math.min(values[RADIATION], 0.5 * rest);
    values[LEADS] = rest - values[RADIATION];
    values[losses + ThermalPath.OFFSET] = 0;
    double[] out = new double[3 + losses];
    model.loss(lossValues(), 0, expected.still_K(), AIR, out);
    values[losses + ThermalPath.HEATING] = out[0] * expected.still_K();
    formula = Formula.of(fit(model), Setting.EXPECTED_SIGNAL);
  }

  /** Convection over the conduction limit. */
  private double convection(PhysicsShaped model, double speed_m_s, double delta_K) {
    double[] q = lossValues();
    q[CONDUCTION] = 1;
    q[LEADS] = 0;
    q[RADIATION] = 0;
    double[] out = new double[3 + losses];
    model.loss(q, speed_m_s, delta_K, AIR, out);
    return out[0];
  }

  private double[] lossValues() {
    return Arrays.copyOf(values, losses);
  }

  private FormulaFit fit(PhysicsShaped model) {
    List<Parameter> parameters = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      ParameterPrior quantity = quantities.get(i);
      parameters.add(new Parameter(quantity.name(), values[i], 0, quantity.unit()));
    }
    return new FormulaFit(
        model.id(),
        model.equationKey(),
        parameters,
        Covariance.of(new double[values.length][values.length]),
        AirState.ROOM,
        OptionalDouble.empty());
  }

  /** Number of parameters. */
  int size() {
    return values.length;
  }

  /** Puts the expected values in their place among all unknowns of a fit. */
  void putInto(double[] all) {
    System.arraycopy(values, 0, all, 0, values.length);
  }

  /** Time constant of a small change at a speed, s. */
  double timeConstant_s(double speed_m_s) {
    double delta = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), AIR);
    double[] loss = formula.lossAndSlopes(speed_m_s, delta, AIR);
    return 1 / (loss[0] + loss[2] * delta);
  }

  /** Difference at rest at a speed, K. */
  double steadyDelta_K(double speed_m_s) {
    return formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), AIR);
  }

  /** Relative change of the speed read at rest with each parameter. */
  double[] gradient(double speed_m_s) {
    return gradients.computeIfAbsent(speed_m_s, this::gradientAt).clone();
  }

  private double[] gradientAt(double speed_m_s) {
    double[] gradient = formula.steadySpeedGradient(speed_m_s, OptionalDouble.empty(), AIR);
    for (int i = 0; i < gradient.length; i++) {
      gradient[i] /= speed_m_s;
    }
    return gradient;
  }
}
