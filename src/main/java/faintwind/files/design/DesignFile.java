package faintwind.files.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.advice.Prices;
import faintwind.physics.choice.DesignField;
import faintwind.physics.choice.DesignTexts;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A design as a file: JSON, {@code "format": "faintwind-design/1"}, valid against {@code
 * design.schema.json}. Keys that are left out take the usual value; a note names every one. Refused
 * with all problems at once: what the schema or a field refuses, parts that are not in the library,
 * designs that contradict themselves.
 */
public final class DesignFile {
  private static final String FORMAT = "faintwind-design/1";
  private static final String PRICES = "prices";
  private static final String CURRENCY = "currency";
  private static final String NOTE = "note";

  /** Read once: a folder holds hundreds of designs. */
  private static final SchemaCheck SCHEMA = SchemaCheck.of("design");

  private DesignFile() {}

  /**
   * All that a design file holds.
   *
   * @param design the design
   * @param prices of its parts
   * @param note what somebody wrote beside it
   */
  public record Stored(Design design, Prices prices, String note) {
    /** The same with other prices. */
    public Stored with(Prices other) {
      return new Stored(design, other, note);
    }

    /** Another design with the same prices. */
    public Stored with(Design other) {
      return new Stored(other, prices, note);
    }

    /** The text of its file. */
    public String text() {
      return DesignFile.text(this);
    }
  }

  /**
   * Reads a design file.
   *
   * @param file the file
   * @param catalogue the parts it may name
   * @throws IOException where the file cannot be read
   */
  public static Checked<Stored> stored(Path file, Catalogue catalogue) throws IOException {
    String name = file.getFileName().toString();
    return JsonFile.read(file, name).then(node -> stored(node, name, catalogue));
  }

  /** The same from a text. */
  public static Checked<Stored> stored(String text, Catalogue catalogue) throws IOException {
    return JsonFile.parse(text.getBytes(StandardCharsets.UTF_8), "design")
        .then(node -> stored(node, "design", catalogue));
  }

  /** The design of a file, without what stands beside it. */
  public static Checked<Design> read(Path file, Catalogue catalogue) throws IOException {
    return stored(file, catalogue).map(Stored::design);
  }

  /** The design of a text, without what stands beside it. */
  public static Checked<Design> parse(String text, Catalogue catalogue) throws IOException {
    return stored(text, catalogue).map(Stored::design);
  }

  /** A design as the text of its file. */
  public static String text(Design design) {
    return text(new Stored(design, Prices.NONE, ""));
  }

  private static String text(Stored stored) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT);
    for (DesignField each : DesignField.values()) {
      put(root, each.field(), each.of(stored.design()));
    }
    if (!stored.note().isEmpty()) {
      root.put(NOTE, stored.note());
    }
    Prices prices = stored.prices();
    if (!prices.currency().isEmpty()) {
      root.withObjectProperty(PRICES).put(CURRENCY, prices.currency());
    }
    new TreeMap<>(prices.each()).forEach(root.withObjectProperty(PRICES)::put);
    if (root.path(PRICES).isEmpty()) {
      root.remove(PRICES);
    }
    return root.toPrettyString() + "\n";
  }

  private static void put(ObjectNode root, Field field, String text) {
    if (text.isEmpty()) {
      return;
    }
    ObjectNode group = root;
    String[] path = field.id().split("\\.", -1);
    for (int i = 0; i < path.length - 1; i++) {
      group = group.withObjectProperty(path[i]);
    }
    if (field.range().isEmpty()) {
      group.put(field.key(), text);
    } else if (field.range().get().whole()) {
      group.put(field.key(), Integer.parseInt(text));
    } else {
      group.put(field.key(), Double.parseDouble(text));
    }
  }

  private static Checked<Stored> stored(ObjectNode node, String name, Catalogue catalogue) {
    Where where = Where.file(name);
    String format = node.path("format").asText();
    if (format.startsWith("faintwind-design/") && !format.equals(FORMAT)) {
      return Checked.refused(
          Problem.error("design.newer-format", where.atColumn("format"), format, FORMAT));
    }
    Map<String, String> texts = new LinkedHashMap<>();
    collect(node, "", texts);
    List<Problem> problems = SCHEMA.problems(node, where, DesignTexts.problems(texts, where));
    return problems.isEmpty()
        ? DesignTexts.design(texts, catalogue, where)
            .map(d -> new Stored(d, prices(node), node.path(NOTE).asText("")))
        : Checked.refused(problems);
  }

  /** The text of every key, by its path with dots. */
  private static void collect(JsonNode node, String path, Map<String, String> texts) {
    if (!node.isObject()) {
      texts.put(path, JsonFile.text(node));
    }
    node.properties()
        .forEach(
            entry ->
                collect(
                    entry.getValue(),
                    path.isEmpty() ? entry.getKey() : path + "." + entry.getKey(),
                    texts));
  }

  private static Prices prices(ObjectNode root) {
    Map<String, Double> each = new LinkedHashMap<>();
    root.path(PRICES)
        .properties()
        .forEach(
            entry -> {
              if (entry.getValue().isNumber()) {
                each.put(entry.getKey(), entry.getValue().asDouble());
              }
            });
    return new Prices(root.path(PRICES).path(CURRENCY).asText(""), each);
  }
}
