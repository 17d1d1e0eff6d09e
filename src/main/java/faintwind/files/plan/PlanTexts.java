package faintwind.files.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlanRequest;
import faintwind.files.JsonFile;
import faintwind.message.Field;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a plan starts from, field by field, at the place that each has in the file. */
final class PlanTexts {
  private PlanTexts() {}

  /** The text of every field, by id. */
  static Map<String, String> read(ObjectNode file) {
    Map<String, String> texts = new HashMap<>();
    for (PlanField each : PlanField.values()) {
      texts.put(each.field().id(), text(each, file, each.path()));
    }
    return texts;
  }

  /** The text of a field, with commas between the items of a list. */
  private static String text(PlanField field, JsonNode from, String path) {
    int dot = path.indexOf('.');
    JsonNode inside = from.path(dot < 0 ? path : path.substring(0, dot));
    if (inside.isArray()) {
      List<String> items = new ArrayList<>();
      inside.forEach(
          item ->
              items.add(dot < 0 ? plain(field, item) : text(field, item, path.substring(dot + 1))));
      return String.join(",", items);
    }
    return dot < 0 ? plain(field, inside) : text(field, inside, path.substring(dot + 1));
  }

  private static String plain(PlanField field, JsonNode value) {
    return value.isNumber() && field.perUnit() != 1
        ? Field.plain(value.asDouble() / field.perUnit())
        : JsonFile.text(value);
  }

  /** Puts what a request says of each field where the file has it. */
  static void write(PlanRequest request, ObjectNode file) {
    for (PlanField each : PlanField.values()) {
      if (!each.of(request).isEmpty()) {
        put(each, each.of(request), file);
      }
    }
  }

  private static void put(PlanField field, String text, ObjectNode root) {
    String[] path = field.path().split("\\.", -1);
    String key = path[path.length - 1];
    ObjectNode group = path.length > 1 ? root.withObjectProperty(path[0]) : root;
    String[] items = text.split(",", -1);
    if (path.length > 2) {
      ArrayNode array = group.withArrayProperty(path[1]);
      for (int i = 0; i < items.length; i++) {
        ObjectNode item = i < array.size() ? (ObjectNode) array.get(i) : array.addObject();
        if (!items[i].isEmpty()) {
          item.set(key, value(field, items[i]));
        }
      }
    } else if (field.isList()) {
      for (String item : items) {
        group.withArrayProperty(key).add(value(field, item));
      }
    } else {
      group.set(key, value(field, text));
    }
  }

  private static JsonNode value(PlanField field, String text) {
    if (field.field().range().isEmpty()) {
      return TextNode.valueOf(text);
    }
    return field.field().range().get().whole()
        ? IntNode.valueOf(Integer.parseInt(text))
        : DoubleNode.valueOf(StoredPlan.rounded(field.perUnit() * Double.parseDouble(text), 6));
  }
}
