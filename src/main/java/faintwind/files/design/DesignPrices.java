package faintwind.files.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.physics.advice.Prices;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/** The group {@code prices} of a design file, which its schema has passed. */
final class DesignPrices {
  private static final String GROUP = "prices";
  private static final String CURRENCY = "currency";

  private DesignPrices() {}

  static Prices of(ObjectNode root) {
    Map<String, Double> each = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : root.path(GROUP).properties()) {
      if (entry.getValue().isNumber()) {
        each.put(entry.getKey(), entry.getValue().asDouble());
      }
    }
    return new Prices(root.path(GROUP).path(CURRENCY).asText(""), each);
  }

  static void put(Prices prices, ObjectNode root) {
    if (prices.currency().isEmpty() && prices.each().isEmpty()) {
      return;
    }
    ObjectNode group = root.putObject(GROUP);
    if (!prices.currency().isEmpty()) {
      group.put(CURRENCY, prices.currency());
    }
    new TreeMap<>(prices.each()).forEach(group::put);
  }
}
