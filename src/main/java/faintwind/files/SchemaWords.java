package faintwind.files;

import com.networknt.schema.ValidationMessage;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Map;
import java.util.Optional;

/** What a schema refuses, said to people who write files and no schemas. */
final class SchemaWords {
  private static final int LONGEST = 60;

  /** Patterns that have words. */
  private static final Map<String, String> PATTERNS =
      Map.of(
          "^[^/\\\\:]+$", "json.no-file-name",
          "^[a-z0-9]+(-[a-z0-9]+)*$", "json.no-id",
          "^[a-z0-9][a-zA-Z0-9-]*$", "json.no-id",
          "^[0-9a-f]{64}$", "json.no-hash",
          "^([0-9a-f]{64})?$", "json.no-hash",
          "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}$", "json.no-minute");

  private SchemaWords() {}

  /** The problem in such words; empty where the schema's own can be read. */
  static Optional<Problem> problem(ValidationMessage message, Where where) {
    String asked = message.getSchemaNode() == null ? "" : message.getSchemaNode().asText();
    return switch (String.valueOf(message.getType())) {
      case "pattern" -> Optional.of(pattern(message, asked, where));
      case "minItems" ->
          Optional.of(
              Problem.error(
                  "json.too-few", where, String.valueOf(message.getInstanceNode().size()), asked));
      case "additionalProperties" ->
          Optional.of(
              Problem.error("json.foreign-key", where, String.valueOf(message.getProperty())));
      case "required" ->
          Optional.of(
              Problem.error("json.key-missing", where, String.valueOf(message.getProperty())));
      default -> Optional.empty();
    };
  }

  private static Problem pattern(ValidationMessage message, String asked, Where where) {
    String shown = shortened(message.getInstanceNode().asText());
    return Problem.error(PATTERNS.getOrDefault(asked, "json.pattern"), where, shown, asked);
  }

  /** What a file says, as much of it as a sentence bears. */
  static String shortened(String found) {
    return found.length() > LONGEST ? found.substring(0, LONGEST) + "…" : found;
  }
}
