package faintwind.files.checklist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The texts of a checklist by their keys, such as {@code steps.first-power.cautions.hot-ball.text}:
 * the way to a text through the file, with an element of a list by its id, or else by its number.
 * Whatever is not a text (formulas, needs, gates, units) has no key and cannot be translated.
 */
final class ChecklistTexts {
  private static final Set<String> TEXTS =
      Set.of(
          "title",
          "ends",
          "about",
          "banner",
          "why",
          "good",
          "shows",
          "text",
          "source",
          "question",
          "right",
          "label",
          "expected",
          "words",
          "then",
          "photo",
          "bought",
          "stop",
          "cause",
          "because",
          "todo",
          "apart",
          "last");
  private static final Set<String> LISTS = Set.of("how", "wrong", "tools", "parts", "notes");

  /** Of what is on safety as a whole. */
  private static final Set<String> ALL =
      Stream.concat(TEXTS.stream(), LISTS.stream()).collect(Collectors.toUnmodifiableSet());

  private static final List<String> HURTS = List.of("injure", "poison");

  private final Reading reading;

  private ChecklistTexts(Reading reading) {
    this.reading = reading;
  }

  /** Takes an English text; what it gives back stands in its place. */
  @FunctionalInterface
  interface Reading {
    String text(String key, String english, boolean onSafety);
  }

  /** Hands over each text of a step, a stage or a remedy. */
  static void each(ObjectNode node, String key, Reading reading) {
    new ChecklistTexts(reading).object(node, key, hurts(node) ? LISTS : Set.of());
  }

  /** Where the work can hurt, what to do is a text on safety as well as its cautions. */
  private static boolean hurts(ObjectNode step) {
    return step.path("cautions").findValuesAsText("level").stream().anyMatch(HURTS::contains);
  }

  /**
   * Walks an object.
   *
   * @param safe keys of it whose texts are on safety
   */
  private void object(ObjectNode node, String key, Set<String> safe) {
    for (Map.Entry<String, JsonNode> entry : node.deepCopy().properties()) {
      String name = entry.getKey();
      String own = key + "." + name;
      JsonNode value = node.path(name);
      boolean onSafety = safe.contains(name) || name.equals("banner") || name.equals("stop");
      if (value.isTextual() && TEXTS.contains(name)) {
        node.put(name, reading.text(own, value.asText(), onSafety));
      } else if (value instanceof ObjectNode inner) {
        object(inner, own, onSafety(name, inner) ? ALL : inherited(safe));
      } else if (value instanceof ArrayNode list) {
        list(list, own, name, safe);
      }
    }
  }

  private void list(ArrayNode list, String key, String name, Set<String> safe) {
    for (int i = 0; i < list.size(); i++) {
      JsonNode element = list.get(i);
      if (element instanceof ObjectNode inner) {
        String own = key + "." + inner.path("id").asText(String.valueOf(i));
        object(inner, own, onSafety(name, inner) ? ALL : inherited(safe));
      } else if (element.isTextual() && LISTS.contains(name)) {
        boolean onSafety = safe.contains(name);
        list.set(i, new TextNode(reading.text(key + "." + i, element.asText(), onSafety)));
      }
    }
  }

  /** What lies inside a caution is on safety as a whole; a list of a step is not handed on. */
  private static Set<String> inherited(Set<String> safe) {
    return safe.equals(ALL) ? ALL : Set.of();
  }

  private static boolean onSafety(String name, ObjectNode inner) {
    return name.equals("cautions")
        || name.equals("stop_if")
        || inner.path("verdict").asText().equals("stop");
  }
}
