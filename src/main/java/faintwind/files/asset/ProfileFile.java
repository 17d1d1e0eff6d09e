package faintwind.files.asset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.profile.ImportProfile;
import faintwind.files.AtomicFile;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * An import profile as a file: JSON, {@code "format": "faintwind-profile/1"}, valid against {@code
 * profile.schema.json}; format in docs/formats/profile.md. Refused with all problems at once: what
 * the schema refuses, and profiles that contradict themselves.
 */
public final class ProfileFile {
  private static final String FORMAT = "faintwind-profile/1";

  private ProfileFile() {}

  /**
   * Reads a profile.
   *
   * @param name how messages name it
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<ImportProfile> read(Path file, String name) throws IOException {
    SchemaCheck check = SchemaCheck.of("profile");
    return JsonFile.read(file, name).then(node -> profile(node, check, name));
  }

  /** The same from a text. */
  public static Checked<ImportProfile> parse(String text, String name) throws IOException {
    SchemaCheck check = SchemaCheck.of("profile");
    return JsonFile.parse(text.getBytes(StandardCharsets.UTF_8), name)
        .then(node -> profile(node, check, name));
  }

  /** Puts a profile in a file's place, whole or not at all. */
  public static void write(Path file, ImportProfile profile) throws IOException {
    AtomicFile.write(file, text(profile).getBytes(StandardCharsets.UTF_8));
  }

  /** A profile as the text of its file. */
  public static String text(ImportProfile profile) {
    ObjectNode json = JsonNodeFactory.instance.objectNode().put("format", FORMAT);
    return json.setAll(ProfileForm.JSON.write(profile)).toPrettyString() + "\n";
  }

  private static Checked<ImportProfile> profile(ObjectNode node, SchemaCheck check, String name) {
    Where where = Where.file(name);
    String format = node.path("format").asText();
    if (format.startsWith("faintwind-profile/") && !format.equals(FORMAT)) {
      return Checked.refused(
          Problem.error("profile.newer-format", where.atColumn("format"), format, FORMAT));
    }
    List<Problem> problems = check.problems(node, where);
    if (problems.isEmpty()) {
      problems = ProfileRules.problems(node, where);
    }
    return problems.isEmpty() ? Checked.ok(bound(node)) : Checked.refused(problems);
  }

  private static ImportProfile bound(ObjectNode node) {
    for (JsonNode column : node.path("columns")) {
      if (!column.has("scale")) {
        ((ObjectNode) column).put("scale", 1);
      }
    }
    return ProfileForm.JSON.read(node, ImportProfile.class);
  }
}
