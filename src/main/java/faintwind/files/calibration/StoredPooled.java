package faintwind.files.calibration;

import faintwind.calibration.Parameter;
import faintwind.calibration.Pooled;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which instruments had a say, with the keys of the file. */
record StoredPooled(List<Pooled.Other> with, Map<String, Value> shared) {
  record Value(double value, double standardUncertainty, String unit) {}

  static StoredPooled of(Pooled pooled) {
    Map<String, Value> shared = new LinkedHashMap<>();
    for (Parameter each : pooled.shared()) {
      shared.put(each.name(), new Value(each.value(), each.u(), each.unit()));
    }
    return new StoredPooled(pooled.with(), shared);
  }

  Pooled toModel() {
    return new Pooled(with, shared.entrySet().stream().map(StoredPooled::parameter).toList());
  }

  private static Parameter parameter(Map.Entry<String, Value> each) {
    Value value = each.getValue();
    return new Parameter(each.getKey(), value.value(), value.standardUncertainty(), value.unit());
  }
}
