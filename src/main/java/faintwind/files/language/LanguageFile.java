package faintwind.files.language;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.InputFile;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Translation;
import faintwind.message.Translation.Direction;
import faintwind.message.Translation.Review;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a language file, valid against {@code lang.schema.json}: texts by their keys, and for texts
 * on safety the marks that they were reviewed. Whether the keys are those of the English texts is
 * for whoever has these.
 */
public final class LanguageFile {
  /** All texts of the program take half a megabyte in English. */
  private static final long LARGEST_BYTES = 8L << 20;

  private LanguageFile() {}

  /**
   * Reads one.
   *
   * @param name as it is named to people
   * @return refused where it is too large, not JSON or not of the schema, where a date does not
   *     exist, or where it is of another language than its name says
   * @throws IOException where it cannot be read
   */
  public static Checked<Translation> read(Path file, String name) throws IOException {
    Optional<Problem> trouble = InputFile.trouble(file, name, LARGEST_BYTES);
    if (trouble.isPresent()) {
      return Checked.refused(trouble.get());
    }
    return JsonFile.parse(Files.readAllBytes(file), name)
        .then(
            node -> {
              List<Problem> form = SchemaCheck.of("lang").problems(node, Where.file(name));
              return form.isEmpty() ? translation(node, code(file), name) : Checked.refused(form);
            });
  }

  /** The code of a language that a file is named after. */
  static String code(Path file) {
    return String.valueOf(file.getFileName()).replaceFirst("\\.json$", "");
  }

  private static Checked<Translation> translation(ObjectNode node, String code, String name) {
    List<Problem> problems = new ArrayList<>();
    String language = node.path("language").asText();
    if (!language.equals(code)) {
      Where where = Where.file(name).atColumn("language");
      problems.add(Problem.error("language.other-code", where, language, code));
    }
    Map<String, String> texts = new HashMap<>();
    node.path("texts").properties().forEach(text -> texts.put(text.getKey(), value(text)));
    Map<String, Review> reviewed = new HashMap<>();
    for (Map.Entry<String, JsonNode> mark : node.path("reviewed").properties()) {
      String on = mark.getValue().path("on").asText();
      try {
        String english = mark.getValue().path("english").asText();
        reviewed.put(mark.getKey(), new Review(LocalDate.parse(on), english));
      } catch (DateTimeException noDay) {
        Where where = Where.file(name).atColumn("reviewed." + mark.getKey());
        problems.add(Problem.error("language.no-day", where, on));
      }
    }
    boolean rightToLeft = node.path("direction").asText().equals("rtl");
    return problems.isEmpty()
        ? Checked.ok(
            new Translation(
                Locale.forLanguageTag(language),
                rightToLeft ? Direction.RTL : Direction.LTR,
                texts,
                reviewed))
        : Checked.refused(problems);
  }

  private static String value(Map.Entry<String, JsonNode> text) {
    return text.getValue().asText();
  }
}
