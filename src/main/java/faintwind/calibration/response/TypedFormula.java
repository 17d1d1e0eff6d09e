package faintwind.calibration.response;

import faintwind.calibration.Coverage;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.run.SignalPath;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;

/**
 * A fitted formula solved for the air speed and typed out with an instrument's own numbers, six
 * digits each, for the reference air and the nominal supply. With θ from the signal by
 *
 * <p>θ = d − {3} d² + {4} d³, d = (signal − {1})/{2},
 *
 * <p>and r = dθ/dt it is U = f(θ, r). Where the model's forced part cannot be solved for the speed
 * in closed form (0.4 Re^½ + 0.06 Re^⅔, tilted), ln U is a quadratic in the logarithm of that part,
 * fitted over the calibrated speeds; the two differ by less than a thousandth there. The resistor's
 * node and the bead's lag are left out: a slow change is assumed.
 *
 * @param key bundle key; its placeholders are the numbers in order
 * @param numbers as typed
 */
public record TypedFormula(String key, List<String> numbers) {
  private static final MathContext SIX = new MathContext(6);
  private static final int POINTS = 60;

  public TypedFormula {
    numbers = List.copyOf(numbers);
  }

  /** The formula of a fit over the speeds its runs covered. */
  public static TypedFormula of(FormulaFit fit, SignalPath signal, Coverage coverage) {
    Formula formula = Formula.of(fit, signal);
    ThermocoupleCurve curve = formula.path().curve();
    double a = 0.5 * curve.slope();
    double b = curve.bend() / 3;
    List<Double> numbers =
        new ArrayList<>(
            List.of(
                formula.path().heating_K_s(),
                formula.path().offset(),
                curve.perKelvin(),
                a,
                2 * a * a - b));
    ResponseModel model =
        ResponseModel.of(
            fit.model(), fit.referenceAir(), fit.ball_m().orElse(FormulaFit.USUAL_BALL_M));
    if (model instanceof PhysicsShaped ball) {
      shaped(ball, fit, coverage, numbers);
    } else {
      int losses = model.quantities().size();
      Arrays.stream(fit.values()).limit(losses).forEach(numbers::add);
    }
    return new TypedFormula(
        "typed." + fit.model(), numbers.stream().map(TypedFormula::typed).toList());
  }

  private static String typed(double value) {
    return value == 0 ? "0" : new BigDecimal(value).round(SIX).stripTrailingZeros().toString();
  }

  /** The model's own numbers, and the quadratic. */
  private static void shaped(
      PhysicsShaped model, FormulaFit fit, Coverage coverage, List<Double> numbers) {
    double[] q = fit.values();
    AirPoint air = AirPoint.of(fit.referenceAir());
    numbers.addAll(model.typedNumbers(q, air));
    WeightedObservedPoints points = new WeightedObservedPoints();
    double low = Math.log(0.7 * coverage.lowest_m_s());
    double high = Math.log(1.2 * coverage.highest_m_s());
    for (int i = 0; i <= POINTS; i++) {
      double lnU = low + (high - low) * i / POINTS;
      points.add(Math.log(model.forcedPart(q, Math.exp(lnU), air)), lnU);
    }
    for (double c : PolynomialCurveFitter.create(2).fit(points.toList())) {
      numbers.add(c);
    }
  }

  /**
   * Air speed by the typed numbers; 0 at or below the loss of still air.
   *
   * @param signal as recorded, signal unit
   * @param rate_K_s change of θ, K/s
   */
  public double speed_m_s(double signal, double rate_K_s) {
    double[] n = numbers.stream().mapToDouble(Double::parseDouble).toArray();
    double d = (signal - n[1]) / n[2];
    double theta = d - n[3] * d * d + n[4] * d * d * d;
    double loss = (n[0] - rate_K_s) / theta;
    double root = Math.sqrt(Math.sqrt(theta));
    return switch (key) {
      case "typed.king-half" -> power((loss - n[5]) / n[6], 2);
      case "typed.king" -> power((loss - n[5]) / n[6], 1 / n[7]);
      case "typed.mixed" -> power(apart(loss - n[5], n[8] * root, n[9]) / n[6], 1 / n[7]);
      case "typed.mixed-linear" ->
          power(apart(loss - n[5] * (1 + n[10] * theta), n[8] * root, n[9]) / n[6], 1 / n[7]);
      default -> {
        double k = 1 + theta / n[10];
        double m =
            2 * ((loss - n[6] - n[7] * k * k * k) / (n[5] * Math.pow(k, AirPoint.K_EXPONENT)) - 1);
        double y = n[9] * root * Math.pow(k, -0.25 - 0.5 * AirPoint.NU_EXPONENT);
        double lnZ = Math.log(apart(m, y, n[8]) * Math.pow(k, n[11]));
        yield Double.isInfinite(lnZ) ? 0 : Math.exp(n[12] + n[13] * lnZ + n[14] * lnZ * lnZ);
      }
    };
  }

  private static double power(double base, double exponent) {
    return base > 0 ? Math.pow(base, exponent) : 0;
  }

  /** The forced part of a mixed one. */
  private static double apart(double mixed, double natural, double m) {
    return mixed > natural ? Math.pow(Math.pow(mixed, m) - Math.pow(natural, m), 1 / m) : 0;
  }
}
