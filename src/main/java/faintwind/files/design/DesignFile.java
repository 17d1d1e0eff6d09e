package faintwind.files.design;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.advice.Prices;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignRules;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A design as a file: JSON, {@code "format": "faintwind-design/1"}, valid against {@code
 * design.schema.json}. Keys that are left out take the schema's defaults; a note names every one.
 * Refused with all problems at once: what the schema refuses, parts that are not in the library,
 * designs that contradict themselves.
 */
public final class DesignFile {
  private static final String FORMAT = "faintwind-design/1";

  private DesignFile() {}

  /**
   * Reads a design.
   *
   * @param file the file
   * @param catalogue the parts it may name
   * @throws IOException where the file cannot be read
   */
  public static Checked<Design> read(Path file, Catalogue catalogue) throws IOException {
    String name = file.getFileName().toString();
    SchemaCheck check = SchemaCheck.of("design");
    return JsonFile.read(file, name).then(node -> design(node, check, name, catalogue));
  }

  /** The same from a text, for a design that is only in the window so far. */
  public static Checked<Design> parse(String text, Catalogue catalogue) throws IOException {
    SchemaCheck check = SchemaCheck.of("design");
    return JsonFile.parse(text.getBytes(StandardCharsets.UTF_8), "design")
        .then(node -> design(node, check, "design", catalogue));
  }

  /** The prices that a design's text carries; none where the text is no design. */
  public static Prices prices(String text) throws IOException {
    return JsonFile.parse(text.getBytes(StandardCharsets.UTF_8), "design")
        .fold((root, notes) -> DesignPrices.of(root), problems -> Prices.NONE);
  }

  /** The prices that a design file carries; none where the file is no design. */
  public static Prices prices(Path file) throws IOException {
    return JsonFile.read(file, "design")
        .fold((root, notes) -> DesignPrices.of(root), problems -> Prices.NONE);
  }

  /** A design as the text of its file. */
  public static String text(Design design) {
    return text(design, Prices.NONE);
  }

  /** A design and the prices of its parts as the text of its file. */
  public static String text(Design design, Prices prices) {
    ObjectNode root = DesignJson.object(design);
    DesignPrices.put(prices, root);
    return root.toPrettyString() + "\n";
  }

  private static Checked<Design> design(
      ObjectNode node, SchemaCheck check, String name, Catalogue catalogue) {
    Where where = Where.file(name);
    String format = node.path("format").asText();
    if (format.startsWith("faintwind-design/") && !format.equals(FORMAT)) {
      return Checked.refused(
          Problem.error("design.newer-format", where.atColumn("format"), format, FORMAT));
    }
    List<Problem> problems = check.problems(node, where);
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    DesignReading reading = new DesignReading(node, catalogue, where);
    return reading.design().then(d -> ruled(d, where, reading.notes()));
  }

  private static Checked<Design> ruled(Design design, Where where, List<Problem> notes) {
    List<Problem> problems = new ArrayList<>(DesignRules.problems(design, where));
    return problems.isEmpty() ? Checked.ok(design, notes) : Checked.refused(problems);
  }
}
