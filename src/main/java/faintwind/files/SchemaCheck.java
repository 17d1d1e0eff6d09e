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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Compares JSON with a schema (JSON Schema, draft 2020-12) that ships with the program. */
public final class SchemaCheck {
  private static final String FOLDER = "/faintwind/assets/schemas/";

  private static final String FORMAT = "format";

  private final JsonSchema schema;

  /** What the file has to say that it is; empty where the format may be said in several ways. */
  private final String format;

  private SchemaCheck(JsonSchema schema) {
    this.schema = schema;
    format = schema.getSchemaNode().at("/properties/format/const").asText();
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
    String said = value.path(FORMAT).asText();
    if (!said.isEmpty() && !format.isEmpty() && !said.equals(format)) {
      return List.of(otherFormat(said, where.atColumn(FORMAT)));
    }
    return schema.validate(value).stream()
        .sorted(Comparator.comparing(message -> message.getInstanceLocation().toString()))
        .map(message -> problem(message, where))
        .toList();
  }

  /**
   * The same, in the words of the fields where one of them refuses the same place.
   *
   * @param told what the fields refuse; what is missing is left to the schema
   */
  public List<Problem> problems(JsonNode value, Where where, List<Problem> told) {
    List<Problem> fields = new ArrayList<>(told);
    fields.removeIf(field -> field.found().isEmpty());
    List<Problem> all = new ArrayList<>();
    for (Problem form : problems(value, where)) {
      String key = form.where().column().orElse("").replaceAll("\\.\\d+(?=\\.|$)", "");
      Optional<Problem> better =
          fields.stream().filter(f -> f.where().equals(where.atColumn(key))).findFirst();
      better.ifPresent(fields::remove);
      all.add(better.map(f -> f.at(form.where())).orElse(form));
    }
    all.addAll(fields);
    return all;
  }

  /** Of a file in another format no more can be said: a newer version may differ everywhere. */
  private Problem otherFormat(String said, Where where) {
    String kind = format.substring(0, format.indexOf('/') + 1);
    boolean newer = said.startsWith(kind) && said.substring(kind.length()).matches("[0-9.]+");
    String id = newer ? "json.newer" : "json.other-format";
    return Problem.error(id, where, SchemaWords.shortened(said), format);
  }

  private static Problem problem(ValidationMessage message, Where where) {
    String place = message.getInstanceLocation().toString();
    String text = message.getMessage();
    String found = text.startsWith(place + ": ") ? text.substring(place.length() + 2) : text;
    String dotted = place.replaceFirst("^/", "").replace('/', '.');
    Where key = dotted.isEmpty() ? where : where.atColumn(dotted);
    return SchemaWords.problem(message, key)
        .orElseGet(() -> Problem.error("json.schema", key, found));
  }
}
