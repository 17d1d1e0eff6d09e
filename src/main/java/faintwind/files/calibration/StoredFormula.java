package faintwind.files.calibration;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import faintwind.calibration.Calibration;
import faintwind.calibration.complete.CompleteFormula;
import faintwind.calibration.complete.CompleteFormula.Chains;
import faintwind.calibration.complete.TestVector;
import faintwind.calibration.response.FormulaConstants.Constant;
import java.util.List;
import java.util.Map;

/**
 * What makes a calibration file complete for another program, with the keys of the file. Written,
 * never read: this program works it out anew.
 */
record StoredFormula(
    Map<String, Constant> constants,
    Chains relations,
    Filter filter,
    Map<String, Double> uncertainty,
    List<TestVector> testVectors) {

  /** The keys that a reader needs. */
  static final List<String> FOR_READER =
      List.of(
          "signal_unit",
          "supply_V",
          "parameters",
          "covariance",
          "reference_air",
          "speed_range_m_s",
          "performance",
          "constants",
          "relations",
          "filter",
          "uncertainty",
          "test_vectors");

  record Filter(List<Double> walks_1_sqrt_s, @JsonAnyGetter Map<String, Double> settings) {}

  static StoredFormula of(Calibration calibration) {
    CompleteFormula complete = CompleteFormula.of(calibration);
    return new StoredFormula(
        complete.constants(),
        complete.relations(),
        new Filter(complete.filter().walks_1_sqrt_s(), complete.filter().settings()),
        complete.uncertainty(),
        complete.testVectors());
  }
}
