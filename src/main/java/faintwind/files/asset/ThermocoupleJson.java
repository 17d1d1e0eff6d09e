package faintwind.files.asset;

import static faintwind.files.asset.AssetJson.number;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.physics.Interval;
import faintwind.physics.Thermocouple;
import faintwind.physics.part.ThermocoupleType;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Turns thermocouple files that their schema has passed into types in SI units. */
final class ThermocoupleJson {
  private ThermocoupleJson() {}

  static ThermocoupleType type(ObjectNode node) {
    return new ThermocoupleType(
        AssetJson.label(node),
        new Thermocouple(
            node.get("letter").asText(), list(node.get("pieces"), ThermocoupleJson::piece)),
        new ThermocoupleType.Alloys(alloy(node.get("positive")), alloy(node.get("negative"))),
        node.get("joining").asText(),
        list(node.get("tolerances"), ThermocoupleJson::tolerance),
        list(node.get("colours"), ThermocoupleJson::colours),
        list(node.get("wires"), ThermocoupleJson::gauge));
  }

  private static Thermocouple.Polynomial piece(JsonNode node) {
    List<Double> exponential = new ArrayList<>();
    if (node.has("exponential")) {
      JsonNode e = node.get("exponential");
      exponential.add(number(e, "a0_mV"));
      exponential.add(number(e, "a1_per_C2"));
      exponential.add(number(e, "a2_C"));
    }
    return new Thermocouple.Polynomial(
        number(node, "from_C"),
        number(node, "to_C"),
        list(node.get("coefficients_mV"), JsonNode::asDouble),
        exponential);
  }

  private static ThermocoupleType.Alloy alloy(JsonNode node) {
    return new ThermocoupleType.Alloy(
        node.get("alloy").asText(), number(node, "conductivity_W_mK"));
  }

  private static ThermocoupleType.Tolerance tolerance(JsonNode node) {
    return new ThermocoupleType.Tolerance(
        node.get("standard").asText(), node.get("grade").asText(), number(node, "limit_K"));
  }

  private static ThermocoupleType.Colours colours(JsonNode node) {
    return new ThermocoupleType.Colours(
        node.get("standard").asText(),
        node.get("positive").asText(),
        node.get("negative").asText(),
        node.get("status").asText());
  }

  private static ThermocoupleType.Gauge gauge(JsonNode node) {
    return new ThermocoupleType.Gauge(
        node.get("awg").asInt(),
        number(node, "diameter_mm") * 1e-3,
        // two makers' tables differ by up to 5 %, a real wire by 10 %
        Interval.range(
            number(node, "pair_low_ohm_m") * 0.95, number(node, "pair_high_ohm_m") * 1.05));
  }

  private static <T> List<T> list(JsonNode array, Function<JsonNode, T> reading) {
    List<T> all = new ArrayList<>();
    array.forEach(item -> all.add(reading.apply(item)));
    return all;
  }
}
