package faintwind.files.instrument;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import faintwind.files.Sha256;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What the folder's summary knows of the journal. The last line of a journal is followed by none
 * that carries its hash; the summary does, and seals itself with a hash over its own bytes.
 *
 * @param head hash of the journal's last line when the summary was made; empty where it is not
 *     known
 * @param lines how many lines there were
 * @param problem what is wrong with the summary itself
 */
record Seal(Optional<String> head, int lines, Optional<Problem> problem) {
  static final String FILE = "instrument.json";

  private static final String KEY = ",\n  \"sha256\" : \"";
  private static final String CLOSE = "\"\n}\n";

  /** A summary's text with the hash over all of it before that key. */
  static String sealed(ObjectNode summary) {
    String text = summary.toPrettyString().replace("\r\n", "\n");
    String body = text.substring(0, text.lastIndexOf("\n}"));
    return body + KEY + Sha256.of(body.getBytes(StandardCharsets.UTF_8)) + CLOSE;
  }

  /**
   * Reads the summary of a folder.
   *
   * @throws IOException where it is there and cannot be read
   */
  static Seal of(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    Where where = Where.file(FILE);
    if (!Files.isRegularFile(file)) {
      return unknown(Optional.of(Problem.error("summary.missing", where, FILE)));
    }
    byte[] bytes = Files.readAllBytes(file);
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    int end = text.lastIndexOf(KEY);
    if (end < 0) {
      boolean older = !text.contains("\"head\"") && !text.contains("sha256\" : \"");
      return unknown(older ? Optional.empty() : Optional.of(altered(where)));
    }
    if (!holds(text)) {
      return unknown(Optional.of(altered(where)));
    }
    ObjectNode node = JsonFile.object(new String(bytes, StandardCharsets.UTF_8));
    return new Seal(
        Optional.of(node.path("head").asText()), node.path("lines").asInt(), Optional.empty());
  }

  /**
   * Whether a sealed text is what was written.
   *
   * @param text its bytes, one character each
   */
  static boolean holds(String text) {
    int end = text.lastIndexOf(KEY);
    if (end < 0) {
      return false;
    }
    byte[] body = text.substring(0, end).getBytes(StandardCharsets.ISO_8859_1);
    return text.substring(end).equals(KEY + Sha256.of(body) + CLOSE);
  }

  private static Problem altered(Where where) {
    return Problem.error("summary.altered", where, FILE);
  }

  private static Seal unknown(Optional<Problem> problem) {
    return new Seal(Optional.empty(), 0, problem);
  }
}
