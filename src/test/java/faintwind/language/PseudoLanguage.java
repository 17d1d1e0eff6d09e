package faintwind.language;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.checklist.EnglishTexts;
import faintwind.message.ProgramTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** The files of the language that nobody speaks, made from the English texts. */
public final class PseudoLanguage {
  /** As in the tables of languages: English, pseudo-accents. */
  public static final String CODE = "en-XA";

  private static final ObjectMapper JSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private PseudoLanguage() {}

  /** What the program says. Nobody has reviewed it: texts on safety stay English. */
  public static String program() throws IOException {
    return file(programTexts(), Map.of());
  }

  /** What the checklist says. */
  public static String checklist() throws IOException {
    return file(changed(EnglishTexts.read().texts()), Map.of());
  }

  /**
   * Lays both into a person's folder, with marks as if somebody had reviewed every text, so that
   * none is in English.
   */
  public static void reviewed(Path folder) throws IOException {
    Path lang = Files.createDirectories(folder.resolve("lang"));
    Files.writeString(lang.resolve(CODE + ".json"), file(programTexts(), ProgramTexts.english()));
    Map<String, String> steps = EnglishTexts.read().texts();
    Path checklist = Files.createDirectories(folder.resolve("checklist/lang"));
    Files.writeString(checklist.resolve(CODE + ".json"), file(changed(steps), steps));
  }

  private static Map<String, String> programTexts() {
    Map<String, String> texts = changed(ProgramTexts.english());
    ProgramTexts.english()
        .forEach(
            (key, english) -> {
              if (key.startsWith("glossary.") && !key.endsWith(".means")) {
                texts.put(key, PseudoWords.words(english)); // it is looked for in other texts
              }
            });
    return texts;
  }

  private static Map<String, String> changed(Map<String, String> english) {
    Map<String, String> texts = new TreeMap<>();
    english.forEach((key, text) -> texts.put(key, PseudoWords.text(text)));
    return texts;
  }

  private static String file(Map<String, String> texts, Map<String, String> reviewed)
      throws IOException {
    ObjectNode node = JSON.createObjectNode();
    node.put("format", "faintwind-language/1").put("language", CODE);
    ObjectNode own = node.putObject("texts");
    texts.forEach(own::put);
    if (!reviewed.isEmpty()) {
      ObjectNode marks = node.putObject("reviewed");
      reviewed.forEach(
          (key, english) -> marks.putObject(key).put("on", "2026-11-29").put("english", english));
    }
    return JSON.writeValueAsString(node) + "\n";
  }
}
