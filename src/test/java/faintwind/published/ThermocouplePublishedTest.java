package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.files.asset.Library;
import faintwind.physics.Constants;
import faintwind.physics.Thermocouple;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class ThermocouplePublishedTest {

  @TestFactory
  Stream<DynamicTest> referenceFunctions() throws IOException {
    Catalogue parts = Library.shipped();
    return PublishedRow.tests("thermocouples.csv", row -> compute(row, parts));
  }

  private static double compute(PublishedRow row, Catalogue parts) {
    Thermocouple type = parts.thermocouple(row.text("type")).orElseThrow().function();
    return switch (row.what()) {
      case "emf" -> 1e3 * type.emf_V(kelvin(row, "t"));
      case "sensitivity" -> 1e6 * type.sensitivity_V_K(kelvin(row, "t"));
      case "differential" -> 1e3 * type.differential_V(kelvin(row, "hot"), kelvin(row, "cold"));
      case "low_by_25C_slope" -> {
        double emf = type.differential_V(kelvin(row, "hot"), kelvin(row, "cold"));
        double straight = type.sensitivity_V_K(298.15) * (row.number("hot") - row.number("cold"));
        yield 100 * (1 - straight / emf);
      }
      default -> throw new IllegalArgumentException(row.what());
    };
  }

  private static double kelvin(PublishedRow row, String name) {
    return row.number(name) + Constants.ZERO_C_K;
  }

  /**
   * A type is added as a file with its own check points; they are the test, with no code touched.
   */
  @TestFactory
  List<DynamicTest> checkPointsInTheFilesHold() throws IOException {
    Catalogue parts = Library.shipped();
    List<DynamicTest> tests = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("assets/thermocouples"))) {
      for (Path file : files.sorted().toList()) {
        JsonNode node = new ObjectMapper().readTree(file.toFile());
        Thermocouple type =
            parts.thermocouple(node.get("letter").asText()).orElseThrow().function();
        for (JsonNode point : node.get("check_points")) {
          String name =
              "type %s at %s °C (%s)"
                  .formatted(
                      type.letter(), point.get("temperature_C"), point.get("source").asText());
          tests.add(DynamicTest.dynamicTest(name, () -> holds(type, point)));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThanOrEqualTo(7 * 5);
    return tests;
  }

  private static void holds(Thermocouple type, JsonNode point) {
    double t_K = point.get("temperature_C").asDouble() + Constants.ZERO_C_K;
    double emf_mV = point.get("emf_mV").asDouble();
    assertThat(1e3 * type.emf_V(t_K))
        .isCloseTo(emf_mV, within(point.get("emf_tolerance_mV").asDouble()));
    assertThat(1e6 * type.sensitivity_V_K(t_K))
        .isCloseTo(
            point.get("sensitivity_uV_K").asDouble(),
            within(point.get("sensitivity_tolerance_uV_K").asDouble()));
    assertThat(type.temperature_K(type.emf_V(t_K))).isCloseTo(t_K, within(1e-3));
  }
}
