package faintwind.files.asset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;

/** The kinds of things that data files describe, and what a schema cannot say about them. */
enum AssetKind {
  METAL("metals", "metal"),
  COAT("coats", "coat"),
  WIRE("wires", "wire"),
  THERMOCOUPLE("thermocouples", "thermocouple"),
  RESISTOR("resistors", "resistor"),
  LOGGER("loggers", "logger"),
  BATTERY("batteries", "battery");

  private final String folder;
  private final String schema;

  AssetKind(String folder, String schema) {
    this.folder = folder;
    this.schema = schema;
  }

  String folder() {
    return folder;
  }

  String schema() {
    return schema;
  }

  /** Pairs of values in the wrong order. */
  List<Problem> contradictions(ObjectNode node, Where where) {
    List<Problem> problems = new ArrayList<>();
    node.properties()
        .forEach(
            e -> {
              if (isPair(e.getValue())
                  && e.getValue().get(0).asDouble() > e.getValue().get(1).asDouble()) {
                problems.add(reversed(where, e.getKey(), e.getValue()));
              }
            });
    order(node, where, "core_mm", "outer_mm", problems);
    order(node, where, "full_rating_C", "no_rating_C", problems);
    order(node, where, "range_low_mV", "range_high_mV", problems);
    order(node, where, "end_V", "fresh_V", problems);
    return problems;
  }

  private static boolean isPair(JsonNode value) {
    return value.isArray() && value.size() == 2 && value.get(0).isNumber();
  }

  private static void order(
      ObjectNode node, Where where, String low, String high, List<Problem> problems) {
    if (node.has(low) && node.get(low).asDouble() > node.get(high).asDouble()) {
      problems.add(
          Problem.error(
              "asset.order",
              where.atColumn(low),
              node.get(low).asText(),
              high,
              node.get(high).asText()));
    }
  }

  private static Problem reversed(Where where, String key, JsonNode pair) {
    return Problem.error(
        "asset.reversed", where.atColumn(key), pair.get(0).asText(), pair.get(1).asText());
  }
}
