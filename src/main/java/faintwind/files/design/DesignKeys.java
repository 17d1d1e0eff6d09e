package faintwind.files.design;

import com.fasterxml.jackson.databind.JsonNode;
import faintwind.message.Where;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The keys of one group of a design. What is left out takes its default, and that is told. The
 * schema has already seen to kinds and ranges.
 */
final class DesignKeys {
  private final JsonNode node;
  private final String group;
  private final DesignParts parts;

  DesignKeys(JsonNode node, String group, DesignParts parts) {
    this.node = node;
    this.group = group;
    this.parts = parts;
  }

  Where where(String key) {
    return parts.where().atColumn(group + "." + key);
  }

  boolean has(String key) {
    return node.has(key);
  }

  JsonNode node(String key) {
    return node.path(key);
  }

  DesignKeys inside(String key) {
    return new DesignKeys(node.path(key), group + "." + key, parts);
  }

  double number(String key, double otherwise) {
    if (node.has(key)) {
      return node.get(key).asDouble();
    }
    assume(
        key,
        otherwise == Math.rint(otherwise)
            ? String.valueOf((long) otherwise)
            : String.valueOf(otherwise));
    return otherwise;
  }

  OptionalDouble optional(String key) {
    return node.has(key) ? OptionalDouble.of(node.get(key).asDouble()) : OptionalDouble.empty();
  }

  String text(String key, String otherwise) {
    if (node.has(key)) {
      return node.get(key).asText();
    }
    assume(key, otherwise);
    return otherwise;
  }

  Optional<String> optionalText(String key) {
    return node.has(key) ? Optional.of(node.get(key).asText()) : Optional.empty();
  }

  private void assume(String key, String value) {
    parts.assume(group + "." + key, value);
  }
}
