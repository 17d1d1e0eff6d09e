package faintwind.files.checklist;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Every text of the standard checklist by its key, and which of them are on safety. */
public record EnglishTexts(Map<String, String> texts, Set<String> onSafety) {
  private static final Path STANDARD = Path.of("checklists/standard");

  public static EnglishTexts read() throws IOException {
    EnglishTexts all = new EnglishTexts(new TreeMap<>(), new TreeSet<>());
    for (JsonNode stage : json("checklist.json").path("stages")) {
      String id = stage.path("id").asText();
      all.take((ObjectNode) stage, "stages." + id);
      for (JsonNode step : stage.path("steps")) {
        String name = step.asText();
        all.take((ObjectNode) json(id + "/" + name + ".json"), "steps." + name);
      }
    }
    for (JsonNode remedy : json("remedies.json").path("remedies")) {
      all.take((ObjectNode) remedy, "remedies." + remedy.path("id").asText());
    }
    return all;
  }

  private static JsonNode json(String name) throws IOException {
    return new ObjectMapper().readTree(STANDARD.resolve(name).toFile());
  }

  private void take(ObjectNode node, String key) {
    ChecklistTexts.each(
        node,
        key,
        (own, english, safety) -> {
          texts.put(own, english);
          if (safety) {
            onSafety.add(own);
          }
          return english;
        });
  }
}
