package faintwind.files.calibration;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.run.SignalPath;
import faintwind.files.JsonFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * What a list of many instruments asks of a calibration, without reading the whole of it.
 *
 * @param signal what its numbers are
 * @param formula the fitted formula
 * @param range over what, and how well; empty where it does not say
 */
public record CalibrationGlance(SignalPath signal, FormulaFit formula, Optional<Range> range) {
  private static final ObjectMapper JSON =
      new ObjectMapper(
          JsonFactory.builder().enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER).build());

  /** The keys that are read. */
  private static final Set<String> READ =
      Set.of(
          "format",
          "signal_unit",
          "chain",
          "thermocouple",
          "signal_per_K",
          "supply_V",
          "model",
          "parameters",
          "covariance",
          "reference_air",
          "ball_diameter_m",
          "speed_range_m_s",
          "performance");

  /** Below them, the most of the file: what each speed's uncertainty is made of. */
  private static final String PASSED_OVER = "budget";

  /**
   * Over which speeds, and how well.
   *
   * @param lowest_m_s slowest calibrated speed
   * @param highest_m_s fastest one
   * @param u95Share expanded uncertainty over the speed, the median over the calibrated speeds
   */
  public record Range(double lowest_m_s, double highest_m_s, double u95Share) {}

  /** What those keys say of the formula. */
  record Part(@JsonUnwrapped SignalPath signal, @JsonUnwrapped StoredCalibration.Formula formula) {}

  /**
   * At bytes that are known to be those of a calibration: they are not checked again.
   *
   * @return empty where they are none
   */
  public static Optional<CalibrationGlance> of(byte[] checked) {
    try {
      ObjectNode file = object(checked);
      if (!file.path("format").asText().equals(StoredCalibration.FORMAT)) {
        return Optional.empty();
      }
      Part part = CalibrationFile.part(file, Part.class);
      return Optional.of(
          new CalibrationGlance(part.signal(), part.formula().toModel(), range(file)));
    } catch (IOException | IllegalArgumentException other) {
      return Optional.empty();
    }
  }

  /** The range in a file; empty where it cannot be read: {@link CalibrationFile} says why. */
  public static Optional<Range> range(Path file) {
    try {
      return JsonFile.bytes(file, file.toString())
          .fold((bytes, notes) -> range(bytes), problems -> Optional.empty());
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  /** The same of the bytes of a file. */
  public static Optional<Range> range(byte[] bytes) {
    try {
      return range(object(bytes));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<Range> range(JsonNode json) {
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
        : Optional.of(new Range(low, high, shares[shares.length / 2]));
  }

  /** The object in a file, with the keys that are read; nothing after the last of them. */
  private static ObjectNode object(byte[] bytes) throws IOException {
    ObjectNode object = JSON.createObjectNode();
    try (JsonParser in = JSON.getFactory().createParser(bytes)) {
      in.nextToken();
      while (object.size() < READ.size() && in.nextToken() == JsonToken.FIELD_NAME) {
        String key = in.currentName();
        in.nextToken();
        if (READ.contains(key)) {
          object.set(key, value(in));
        } else {
          in.skipChildren();
        }
      }
    }
    return object;
  }

  private static JsonNode value(JsonParser in) throws IOException {
    return switch (in.currentToken()) {
      case START_ARRAY -> array(in);
      case START_OBJECT -> inner(in);
      case VALUE_STRING -> JSON.getNodeFactory().textNode(in.getText());
      case VALUE_NUMBER_FLOAT -> JSON.getNodeFactory().numberNode(in.getDoubleValue());
      default -> JSON.readTree(in);
    };
  }

  private static ArrayNode array(JsonParser in) throws IOException {
    ArrayNode array = JSON.createArrayNode();
    while (in.nextToken() != JsonToken.END_ARRAY) {
      array.add(value(in));
    }
    return array;
  }

  private static ObjectNode inner(JsonParser in) throws IOException {
    ObjectNode object = JSON.createObjectNode();
    while (in.nextToken() == JsonToken.FIELD_NAME) {
      String key = in.currentName();
      in.nextToken();
      if (key.equals(PASSED_OVER)) {
        in.skipChildren();
      } else {
        object.set(key, value(in));
      }
    }
    return object;
  }
}
