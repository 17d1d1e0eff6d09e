package faintwind.calibration;

import faintwind.physics.AirState;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The fitted formula.
 *
 * @param model id of a {@link faintwind.calibration.response.ResponseModel}
 * @param equation the equation in words
 * @param parameters every parameter, in the model's order
 * @param covariance of the parameters, in the same order
 * @param referenceAir air state in which the parameters hold as they stand
 * @param ball_m diameter of the balls, m; empty where no build record named it
 */
public record FormulaFit(
    String model,
    String equation,
    List<Parameter> parameters,
    Covariance covariance,
    AirState referenceAir,
    OptionalDouble ball_m) {
  /** Diameter where none is on record, m: the ball most builds use, own choice. */
  public static final double USUAL_BALL_M = 0.0127;

  public FormulaFit {
    parameters = List.copyOf(parameters);
    if (parameters.size() != covariance.size()) {
      throw new IllegalArgumentException(
          parameters.size() + " parameters, covariance of " + covariance.size());
    }
  }

  /** Diameter that the equation and the mixed-flow ratio Gr/Re² are formed with, m. */
  public double diameter_m() {
    return ball_m.orElse(USUAL_BALL_M);
  }

  /** The values in order. */
  public double[] values() {
    return parameters.stream().mapToDouble(Parameter::value).toArray();
  }
}
