package faintwind.calibration;

import faintwind.physics.AirState;
import java.util.List;

/**
 * The fitted formula.
 *
 * @param model id of a {@link faintwind.calibration.response.ResponseModel}
 * @param equation the equation in words
 * @param parameters every parameter, in the model's order
 * @param covariance of the parameters, in the same order
 * @param referenceAir air state in which the parameters hold as they stand
 */
public record FormulaFit(
    String model,
    String equation,
    List<Parameter> parameters,
    Covariance covariance,
    AirState referenceAir) {
  public FormulaFit {
    parameters = List.copyOf(parameters);
    if (parameters.size() != covariance.size()) {
      throw new IllegalArgumentException(
          parameters.size() + " parameters, covariance of " + covariance.size());
    }
  }

  /** The parameter of that name. */
  public Parameter parameter(String name) {
    return parameters.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  /** The values in order. */
  public double[] values() {
    return parameters.stream().mapToDouble(Parameter::value).toArray();
  }
}
