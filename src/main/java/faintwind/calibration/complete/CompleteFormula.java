package faintwind.calibration.complete;

import faintwind.calibration.Calibration;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.response.FormulaConstants;
import faintwind.calibration.response.FormulaConstants.Constant;
import faintwind.calibration.response.Relation;
import faintwind.calibration.response.Relations;
import faintwind.calibration.response.StillDraught;
import faintwind.calibration.speed.LiveSettings;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.HeaterLimits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A calibration's formula as another program needs it, besides the parameters and their covariance.
 *
 * @param constants numbers that the formulas name, with units
 * @param relations the formulas, typed out, in three chains
 * @param filter settings of the filter for a live stream
 * @param uncertainty what the expanded uncertainty is made of besides the covariance
 * @param testVectors inputs and the speed that follows
 */
public record CompleteFormula(
    Map<String, Constant> constants,
    Chains relations,
    Filter filter,
    Map<String, Double> uncertainty,
    List<TestVector> testVectors) {

  /**
   * The chains of formulas.
   *
   * @param speed from signal, rate, air and supply to the speed
   * @param loss from speed, difference and air to the loss
   * @param state what changes in a second, and the signal
   */
  public record Chains(List<Relation> speed, List<Relation> loss, List<Relation> state) {}

  /**
   * The filter's settings.
   *
   * @param walks_1_sqrt_s strengths of the walk, each with a filter of its own
   * @param settings all others by name
   */
  public record Filter(List<Double> walks_1_sqrt_s, Map<String, Double> settings) {}

  /** That of a calibration. */
  public static CompleteFormula of(Calibration calibration) {
    FormulaFit fit = calibration.formula();
    return new CompleteFormula(
        FormulaConstants.of(fit, calibration.signal()),
        new Chains(Relations.speed(fit.model()), Relations.loss(fit.model()), Relations.state()),
        new Filter(LiveSettings.walks_1_sqrt_s(), settings(calibration)),
        LiveSettings.uncertainty(StillDraught.of(calibration)),
        TestVectors.of(calibration));
  }

  private static Map<String, Double> settings(Calibration calibration) {
    Map<String, Double> all = new LinkedHashMap<>(LiveSettings.all());
    HeaterLimits limits = HeaterLimits.of(calibration, new FieldFormula(calibration));
    all.put("greatest_loss_1_s", limits.greatestLoss_1_s());
    all.put("still_delta_K", limits.stillDelta_K());
    return all;
  }
}
