package faintwind.files.instrument;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the keys of one JSON object and collects what is missing or of the wrong kind. Where a key
 * is missing, a neutral value is returned and a problem stands in the list: the caller looks at the
 * list before it uses anything.
 */
final class Keys {
  private final ObjectNode node;
  private final Where where;
  private final List<Problem> problems;

  Keys(ObjectNode node, Where where, List<Problem> problems) {
    this.node = node;
    this.where = where;
    this.problems = problems;
  }

  String text(String key) {
    JsonNode value = node.get(key);
    if (value == null || !value.isTextual()) {
      missing(key, value);
      return "";
    }
    return value.textValue();
  }

  Optional<String> optionalText(String key) {
    return node.hasNonNull(key) ? Optional.of(text(key)) : Optional.empty();
  }

  double number(String key) {
    JsonNode value = node.get(key);
    if (value == null || !value.isNumber()) {
      missing(key, value);
      return 0;
    }
    return value.doubleValue();
  }

  OptionalDouble optionalNumber(String key) {
    return node.hasNonNull(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
  }

  boolean flag(String key) {
    JsonNode value = node.get(key);
    return value != null && value.booleanValue();
  }

  /** The keys of an object inside this one. */
  Optional<Keys> inside(String key) {
    JsonNode value = node.get(key);
    if (value instanceof ObjectNode object) {
      return Optional.of(new Keys(object, where, problems));
    }
    if (value != null && !value.isNull()) {
      missing(key, value);
    }
    return Optional.empty();
  }

  /** The JSON text of whatever stands under a key. */
  String json(String key) {
    JsonNode value = node.get(key);
    if (value == null) {
      missing(key, value);
      return "";
    }
    return value.toString();
  }

  /** Notes a word that is not one of those allowed. */
  void unknownWord(String key, String found, String allowed) {
    problems.add(Problem.error("journal.unknown-word", where.atColumn(key), found, key, allowed));
  }

  private void missing(String key, @org.jspecify.annotations.Nullable JsonNode value) {
    String found = value == null ? "" : JournalLine.shortened(value.toString());
    problems.add(Problem.error("journal.key-missing", where.atColumn(key), found, key));
  }
}
