package faintwind.files.checklist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/**
 * Lays the texts of another language over a JSON object: a value replaces the value of the same
 * key; an object under an id replaces texts of the array element with that id.
 */
final class OverlayJson {
  private OverlayJson() {}

  static void apply(ObjectNode base, JsonNode overlay) {
    for (Map.Entry<String, JsonNode> entry : overlay.properties()) {
      JsonNode own = base.get(entry.getKey());
      if (own instanceof ObjectNode object && entry.getValue().isObject()) {
        apply(object, entry.getValue());
      } else if (own instanceof ArrayNode array && entry.getValue().isObject()) {
        elements(array, entry.getValue());
      } else if (own != null) {
        base.set(entry.getKey(), entry.getValue());
      }
    }
  }

  private static void elements(ArrayNode array, JsonNode byId) {
    for (JsonNode element : array) {
      if (element instanceof ObjectNode object) {
        apply(object, byId.path(object.path("id").asText(object.path("verdict").asText())));
      }
    }
  }
}
