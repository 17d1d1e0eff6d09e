package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.calibration.Parameter;
import faintwind.calibration.complete.CompleteFormula;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is exported.
 *
 * @param calibration the calibration
 * @param complete its formula for other programs
 * @param file name of its file
 * @param sha256 hash of that file
 * @param due when it is due again, at the latest
 */
public record ExportedFormula(
    Calibration calibration, CompleteFormula complete, String file, String sha256, LocalDate due) {
  /** Parameters and constants by name. */
  Map<String, Double> numbers() {
    Map<String, Double> numbers = new HashMap<>();
    complete.constants().forEach((name, constant) -> numbers.put(name, constant.value()));
    for (Parameter parameter : calibration.formula().parameters()) {
      numbers.put(parameter.name(), parameter.value());
    }
    return numbers;
  }

  /** From loss, difference and air to the speed. */
  ChainCode speed() {
    return chain("speed_m_s", "loss_1_s", "delta_K", "air_K", "nu_300", "nu_air");
  }

  /** From speed, difference and air to the loss. */
  ChainCode loss() {
    List<String> inputs = List.of("speed_m_s", "delta_K", "air_K", "nu_300", "nu_air");
    return ChainCode.of(complete.relations().loss(), inputs, "loss_1_s", numbers());
  }

  /** From a signal to the bead's difference. */
  ChainCode bead() {
    return chain("bead_K", "signal", "air_K");
  }

  /** From the bead's difference to the signal. */
  ChainCode signal() {
    return ChainCode.of(
        complete.relations().state(), List.of("bead_K", "warmer_K"), "signal", numbers());
  }

  /** What the loss needs of the air. */
  List<ChainCode> air() {
    return List.of(
        chain("air_K", "air_C"),
        chain("nu_300", "air_C", "pressure_hPa", "rh_pct"),
        chain("nu_air", "air_K", "nu_300"));
  }

  private ChainCode chain(String target, String... inputs) {
    return ChainCode.of(complete.relations().speed(), List.of(inputs), target, numbers());
  }
}
