package faintwind.files.instrument;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.SchemaCheck;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a line of the journal must hold to be an entry: the keys that the schema of the journal
 * requires for its kind, each of the right type. Patterns and lengths of the schema bind whoever
 * writes; an old line is read without them.
 */
final class JournalRules {
  private static final JsonNode SCHEMA = SchemaCheck.schema("journal");
  private static final JsonNode EVENT = SCHEMA.path("$defs").path("event");
  private static final Kind LINE = Kind.of(SCHEMA);
  private static final Map<String, Kind> KINDS = kinds();

  /** A key that an object may have, and whether it must. */
  private record Key(String name, JsonNode rule, boolean required) {}

  /** The keys of one kind of object. */
  private record Kind(List<Key> keys) {
    static Kind of(JsonNode schema) {
      List<String> required = new ArrayList<>();
      schema.path("required").forEach(key -> required.add(key.asText()));
      List<Key> keys = new ArrayList<>();
      schema
          .path("properties")
          .properties()
          .forEach(
              key ->
                  keys.add(new Key(key.getKey(), key.getValue(), required.contains(key.getKey()))));
      return new Kind(List.copyOf(keys));
    }
  }

  private final Where where;
  private final List<Problem> problems = new ArrayList<>();

  private JournalRules(Where where) {
    this.where = where;
  }

  /** All that is missing or not understood; empty for an entry. */
  static List<Problem> problems(ObjectNode line, Where where) {
    JournalRules rules = new JournalRules(where);
    rules.keys(line, LINE);
    rules.time("at", line.path("at").asText());
    rules.event(line);
    if (rules.problems.isEmpty() && line.path("id").asText().isBlank()) {
      rules.missing("id", null);
    }
    return rules.problems;
  }

  private static Map<String, Kind> kinds() {
    Map<String, Kind> kinds = new HashMap<>();
    for (JsonNode kind : EVENT.path("oneOf")) {
      kinds.put(kind.path("properties").path("what").path("const").asText(), Kind.of(kind));
    }
    return kinds;
  }

  private void time(String key, String text) {
    try {
      OffsetDateTime.parse(text);
    } catch (DateTimeParseException e) {
      problems.add(Problem.error("journal.not-a-time", where.atColumn(key), text));
    }
  }

  private void event(JsonNode event) {
    JsonNode what = event.get("what");
    if (what == null || !what.isTextual()) {
      missing("what", what);
      return;
    }
    Kind kind = KINDS.get(what.textValue());
    if (kind == null) {
      word("what", what, EVENT.path("properties").path("what").path("enum"));
      return;
    }
    keys(event, kind);
    if (event.path("from").isTextual()) {
      time("from", event.path("from").asText());
    }
    boolean valueless = "over-range".equals(event.path("bound").asText());
    if (what.textValue().equals("reading") && !valueless && !event.path("value").isNumber()) {
      missing("value", event.get("value"));
    }
  }

  private void keys(JsonNode object, Kind kind) {
    for (Key key : kind.keys()) {
      JsonNode value = object.get(key.name());
      if (value != null && !value.isNull()) {
        value(key.name(), value, key.rule());
      } else if (key.required()) {
        missing(key.name(), value);
      }
    }
  }

  private void value(String key, JsonNode value, JsonNode rule) {
    boolean right =
        switch (rule.path("type").asText()) {
          case "string" -> value.isTextual();
          case "number" -> value.isNumber() || key.equals("value");
          case "boolean" -> value.isBoolean();
          default -> rule.has("enum") || rule.has("const") || value.isObject();
        };
    if (!right) {
      missing(key, value);
    } else if (rule.has("enum")) {
      word(key, value, rule.path("enum"));
    } else if (rule.has("$ref")) {
      event(value);
    }
  }

  private void word(String key, JsonNode found, JsonNode allowed) {
    List<String> words = new ArrayList<>();
    allowed.forEach(word -> words.add(word.asText()));
    if (!found.isTextual() || !words.contains(found.textValue())) {
      String all = String.join(", ", words);
      problems.add(
          Problem.error("journal.unknown-word", where.atColumn(key), found.asText(), key, all));
    }
  }

  private void missing(String key, @Nullable JsonNode found) {
    String text = found == null ? "" : shortened(found.toString());
    problems.add(Problem.error("journal.key-missing", where.atColumn(key), text, key));
  }

  static String shortened(String line) {
    return line.length() <= 60 ? line : line.substring(0, 57) + "...";
  }
}
