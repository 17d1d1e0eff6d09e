package faintwind.files.calibration;

import com.fasterxml.jackson.databind.JsonNode;
import faintwind.files.JsonFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.StreamSupport;

/**
 * What a list of many instruments says of a calibration, without reading the whole of it.
 *
 * @param lowest_m_s slowest calibrated speed
 * @param highest_m_s fastest one
 * @param u95Share expanded uncertainty over the speed, the median over the calibrated speeds
 */
public record CalibrationGlance(double lowest_m_s, double highest_m_s, double u95Share) {

  /** Empty where the file cannot be read or does not say: {@link CalibrationFile} says why. */
  public static Optional<CalibrationGlance> of(Path file) {
    try {
      return JsonFile.read(file, String.valueOf(file.getFileName()))
          .fold((json, notes) -> of(json), problems -> Optional.empty());
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<CalibrationGlance> of(JsonNode json) {
    double low = json.path("speed_range_m_s").path("from").asDouble(Double.NaN);
    double high = json.path("speed_range_m_s").path("to").asDouble(Double.NaN);
    double[] shares =
        StreamSupport.stream(json.path("performance").path("speeds").spliterator(), false)
            .filter(s -> s.path("speed_m_s").asDouble() >= low)
            .mapToDouble(s -> s.path("u95_m_s").asDouble() / s.path("speed_m_s").asDouble())
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    return Double.isNaN(low + high) || shares.length == 0
        ? Optional.empty()
        : Optional.of(new CalibrationGlance(low, high, shares[shares.length / 2]));
  }
}
