package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The numbers that the templates of C and MicroPython name besides the formulas. */
final class ExportNumbers {

  private final ExportedFormula exported;

  ExportNumbers(ExportedFormula exported) {
    this.exported = exported;
  }

  Map<String, Double> all() {
    Map<String, Double> all = new LinkedHashMap<>(exported.complete().filter().settings());
    all.putAll(exported.complete().uncertainty());
    Map<String, Double> numbers = exported.numbers();
    for (String name :
        new String[] {
          "heating", "heater_share", "sensitivity_slope", "sensitivity_bend", "signal_per_K",
          "reference_K", "nominal_supply_V", "ball_diameter_m", "gravity", "bead_time"
        }) {
      all.put(name, numbers.getOrDefault(name, 0.0));
    }
    double least_s = all.getOrDefault("least_lag_s", 0.0);
    all.put("bead_lag", Math.max(least_s, numbers.getOrDefault("bead_time", 0.0)));
    all.put("heater_lag", Math.max(least_s, numbers.getOrDefault("heater_time", 0.0)));
    surroundings(all, exported.calibration());
    return all;
  }

  private static void surroundings(Map<String, Double> all, Calibration calibration) {
    AirState air = calibration.formula().referenceAir();
    all.put("has_supply", calibration.signal().supply_V().isPresent() ? 1.0 : 0.0);
    all.put("air_C", air.temperature_K() - Constants.ZERO_C_K);
    all.put("pressure_hPa", air.pressure_Pa() / 100);
    all.put("rh_pct", 100 * air.relativeHumidity());
    all.put("still_signal", calibration.performance().stillSignal());
    all.put("noise", calibration.performance().noise());
    all.put("floor_m_s", calibration.performance().floor_m_s());
    all.put("top_m_s", calibration.coverage().highest_m_s());
  }

  /** One definition a line. */
  String definitions(Language language) {
    return all().entrySet().stream()
        .map(entry -> definition(language, entry.getKey(), entry.getValue()))
        .collect(Collectors.joining("\n"));
  }

  private static String definition(Language language, String name, double value) {
    String upper = name.toUpperCase(Locale.ROOT);
    return language == Language.C
        ? "#define FW_" + upper + " (" + language.number(value) + ")"
        : upper + " = " + language.number(value);
  }
}
