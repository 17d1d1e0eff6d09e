package faintwind.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Compares JSON with a schema (JSON Schema, draft 2020-12) that ships with the program. */
public final class SchemaCheck {
  private static final String FOLDER = "/faintwind/assets/schemas/";

  private final JsonSchema schema;

  private SchemaCheck(JsonSchema schema) {
    this.schema = schema;
  }

  /**
   * The shipped schema of a format.
   *
   * @param format such as {@code calibration}, for {@code calibration.schema.json}
   */
  public static SchemaCheck of(String format) {
    JsonSchemaFactory factory = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    SchemaValidatorsConfig config = SchemaValidatorsConfig.builder().locale(Locale.ENGLISH).build();
    return new SchemaCheck(factory.getSchema(schema(format), config));
  }

  /** The same as JSON, for what is more than a check. */
  public static JsonNode schema(String format) {
    String resource = FOLDER + format + ".schema.json";
    try (InputStream in = SchemaCheck.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("no schema " + resource);
      }
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      // it ships inside the program
      throw new UncheckedIOException(resource, e);
    }
  }

  /** Every place where the value departs from the schema; empty where it agrees. */
  public List<Problem> problems(JsonNode value, Where where) {
    return schema.validate(value).stream()
        .sorted(Comparator.comparing(message -> message.getInstanceLocation().toString()))
        .map(message -> problem(message, where))
        .toList();
  }

  private static Problem problem(ValidationMessage message, Where where) {
    String place = message.getInstanceLocation().toString();
    String text = message.getMessage();
    String found = text.startsWith(place + ": ") ? text.substring(place.length() + 2) : text;
    String dotted = place.replaceFirst("^/", "").replace('/', '.');
    Where key = dotted.isEmpty() ? where : where.atColumn(dotted);
    return Problem.error("json.schema", key, found);
  }
}
