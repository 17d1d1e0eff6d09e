package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.plan.PlanField;
import faintwind.message.Field;
import faintwind.physics.choice.DesignField;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The schemas of designs and plans say of each field what the field says: whole or not, limits,
 * words, usual value. {@code -Dgolden.write=true} writes them into the schemas.
 */
class FieldSchemasTest {
  private static final Path SCHEMAS = Path.of("assets/schemas");
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Two spaces, an element a line, as the schemas are. */
  private static final DefaultPrettyPrinter PRINTER =
      new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                  .withArrayEmptySeparator("")
                  .withObjectEmptySeparator(""))
          .withObjectIndenter(new DefaultIndenter("  ", "\n"))
          .withArrayIndenter(new DefaultIndenter("  ", "\n"));

  @Test
  void schemaOfADesignIsAsItsFieldsAre() throws IOException {
    ObjectNode schema = read("design");
    for (DesignField each : DesignField.values()) {
      ObjectNode at = at(schema, each.field().id());
      say(each.field(), 1, at);
      if (!each.field().usual().isEmpty()) {
        at.set("default", usual(each.field()));
      }
    }
    assertIsWritten("design", schema);
  }

  @Test
  void schemaOfAPlanIsAsItsFieldsAre() throws IOException {
    ObjectNode schema = read("plan");
    for (PlanField each : PlanField.values()) {
      say(each.field(), each.perUnit(), at(schema, each.path()));
    }
    assertIsWritten("plan", schema);
  }

  private static ObjectNode read(String format) throws IOException {
    return (ObjectNode) JSON.readTree(file(format).toFile());
  }

  private static Path file(String format) {
    return SCHEMAS.resolve(format + ".schema.json");
  }

  /** Where the schema speaks of a key, with dots between the objects; made where it is new. */
  private static ObjectNode at(ObjectNode schema, String path) {
    ObjectNode at = schema;
    for (String key : path.split("\\.", -1)) {
      at = ((ObjectNode) object(at)).withObjectProperty("properties").withObjectProperty(key);
    }
    return at.get("items") instanceof ObjectNode item ? item : at;
  }

  /** The object that a key stands in: of a list its element, of a choice the one with keys. */
  private static JsonNode object(ObjectNode at) {
    if (at.has("oneOf")) {
      return at.get("oneOf").get(1);
    }
    return at.has("items") ? at.get("items") : at;
  }

  private static void say(Field field, double unit, ObjectNode at) {
    if (field.range().isPresent()) {
      Field.Range range = field.range().get();
      at.put("type", range.whole() ? "integer" : "number");
      at.set("minimum", number(unit * range.least()));
      at.set("maximum", number(unit * range.most()));
    } else if (!field.words().isEmpty()) {
      List<String> words = new ArrayList<>();
      at.path("enum").forEach(word -> words.add(word.asText()));
      boolean same = words.size() == field.words().size() && words.containsAll(field.words());
      if (!same) {
        field.words().forEach(at.putArray("enum")::add);
      }
    } else if (at.isEmpty()) {
      at.put("type", "string");
    }
  }

  private static JsonNode usual(Field field) {
    return field.range().isPresent()
        ? number(Double.parseDouble(field.usual()))
        : JSON.getNodeFactory().textNode(field.usual());
  }

  private static JsonNode number(double value) {
    return value == Math.rint(value) ? IntNode.valueOf((int) value) : DoubleNode.valueOf(value);
  }

  private static void assertIsWritten(String format, ObjectNode schema) throws IOException {
    String text = JSON.writer(PRINTER).writeValueAsString(schema) + "\n";
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(file(format), text);
    }
    assertThat(Files.readString(file(format)))
        .as(format + ".schema.json is as -Dgolden.write=true writes it")
        .isEqualTo(text);
    assertThat(Arrays.asList(text.split("\n", -1))).hasSizeGreaterThan(100);
  }
}
