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
import java.util.Optional;
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
  private static final List<String> WHATS =
      texts(EVENT.path("properties").path("what").path("enum"));

  /** What the schema asks of a value. */
  private enum Form {
    TEXT,
    NUMBER,
    YES_OR_NO,
    WORD,
    OBJECT,
    EVENT;

    static Form of(JsonNode rule) {
      return switch (rule.path("type").asText()) {
        case "string" -> TEXT;
        case "number" -> NUMBER;
        case "boolean" -> YES_OR_NO;
        default -> rule.has("$ref") ? EVENT : rule.has("enum") || rule.has("const") ? WORD : OBJECT;
      };
    }
  }

  /** A key that an object may have, and whether it must. */
  private record Key(String name, Form form, List<String> words, boolean required) {
    static Key of(String name, JsonNode rule, boolean required) {
      return new Key(name, Form.of(rule), texts(rule.path("enum")), required);
    }
  }

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
              key -> {
                String name = key.getKey();
                keys.add(Key.of(name, key.getValue(), required.contains(name)));
              });
      return new Kind(List.copyOf(keys));
    }
  }

  private final Where where;
  private final List<Problem> problems = new ArrayList<>();
  private final Optional<OffsetDateTime> at;

  private JournalRules(ObjectNode line, Where where) {
    this.where = where;
    keys(line, LINE);
    at = time("at", line.path("at").asText());
    event(line);
    if (problems.isEmpty() && line.path("id").asText().isBlank()) {
      missing("id", null);
    }
  }

  /** A line laid beside them. */
  static JournalRules of(ObjectNode line, Where where) {
    return new JournalRules(line, where);
  }

  /** All that is missing or not understood; empty for an entry. */
  List<Problem> problems() {
    return problems;
  }

  /** When the entry was made; empty where no time stands there, which is a problem. */
  Optional<OffsetDateTime> at() {
    return at;
  }

  private static Map<String, Kind> kinds() {
    Map<String, Kind> kinds = new HashMap<>();
    for (JsonNode kind : EVENT.path("oneOf")) {
      kinds.put(kind.path("properties").path("what").path("const").asText(), Kind.of(kind));
    }
    return kinds;
  }

  private Optional<OffsetDateTime> time(String key, String text) {
    try {
      return Optional.of(EntryTime.parse(text));
    } catch (DateTimeParseException e) {
      problems.add(Problem.error("journal.not-a-time", where.atColumn(key), text));
      return Optional.empty();
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
      word("what", what, WHATS);
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
        value(key, value);
      } else if (key.required()) {
        missing(key.name(), value);
      }
    }
  }

  private void value(Key key, JsonNode value) {
    boolean right =
        switch (key.form()) {
          case TEXT -> value.isTextual();
          case NUMBER -> value.isNumber() || key.name().equals("value");
          case YES_OR_NO -> value.isBoolean();
          case WORD -> true;
          case OBJECT, EVENT -> value.isObject();
        };
    if (!right) {
      missing(key.name(), value);
    } else if (!key.words().isEmpty()) {
      word(key.name(), value, key.words());
    } else if (key.form() == Form.EVENT) {
      event(value);
    }
  }

  private void word(String key, JsonNode found, List<String> allowed) {
    if (!found.isTextual() || !allowed.contains(found.textValue())) {
      String all = String.join(", ", allowed);
      problems.add(
          Problem.error("journal.unknown-word", where.atColumn(key), found.asText(), key, all));
    }
  }

  private static List<String> texts(JsonNode all) {
    List<String> words = new ArrayList<>();
    all.forEach(word -> words.add(word.asText()));
    return List.copyOf(words);
  }

  private void missing(String key, @Nullable JsonNode found) {
    String text = found == null ? "" : shortened(found.toString());
    problems.add(Problem.error("journal.key-missing", where.atColumn(key), text, key));
  }

  static String shortened(String line) {
    return line.length() <= 60 ? line : line.substring(0, 57) + "...";
  }
}
