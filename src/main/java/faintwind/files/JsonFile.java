package faintwind.files;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.CharConversionException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a JSON file that must hold one object. Refused: not there, too large, not JSON (with line
 * and place), a key that stands twice, anything after the object.
 */
public final class JsonFile {
  /** No JSON file of this program comes near this size. */
  private static final long LARGEST_BYTES = 64L << 20;

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS) // people write designs and profiles by hand
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private JsonFile() {}

  public static Checked<ObjectNode> read(Path path, String name) throws IOException {
    Checked<byte[]> bytes = bytes(path, name);
    return bytes instanceof Checked.Ok<byte[]> ok
        ? parse(ok.value(), name)
        : Checked.refused(bytes.problems());
  }

  /** The bytes of a file that may be one of JSON; refused where it is too large, or none at all. */
  public static Checked<byte[]> bytes(Path path, String name) throws IOException {
    Optional<Problem> trouble = InputFile.trouble(path, name, LARGEST_BYTES);
    return trouble.isPresent()
        ? Checked.refused(trouble.get())
        : Checked.ok(Files.readAllBytes(path));
  }

  public static Checked<ObjectNode> parse(byte[] bytes, String name) throws IOException {
    Where where = Where.file(name);
    if (bytes.length == 0) {
      return Checked.refused(Problem.error("json.empty", where, ""));
    }
    try {
      JsonNode node = MAPPER.readTree(withoutMark(bytes));
      if (!(node instanceof ObjectNode object)) {
        return Checked.refused(Problem.error("json.not-an-object", where, ""));
      }
      Optional<String> beyond = beyondNumbers(object, "");
      return beyond.isEmpty()
          ? Checked.ok(object)
          : Checked.refused(Problem.error("json.number", where, beyond.get()));
    } catch (JsonProcessingException e) {
      JsonLocation place = e.getLocation();
      Where line = place == null ? where : where.atLine(Math.max(1, place.getLineNr()));
      String column = place == null ? "" : String.valueOf(place.getColumnNr());
      String reason = firstSentence(e.getOriginalMessage());
      return Checked.refused(Problem.error("json.syntax", line, reason, column));
    } catch (CharConversionException e) {
      // its first bytes look like another encoding, and are none
      return Checked.refused(
          Problem.error("json.syntax", where, firstSentence(String.valueOf(e.getMessage())), "1"));
    }
  }

  /**
   * The object in a text that is known to hold one.
   *
   * @throws IllegalArgumentException where it does not
   */
  public static ObjectNode object(String text) {
    try {
      return (ObjectNode) MAPPER.readTree(text);
    } catch (JsonProcessingException | ClassCastException e) {
      throw new IllegalArgumentException("not a JSON object: " + e.getMessage(), e);
    }
  }

  /** A value as a person would type it: no exponent, no zeros after the point. */
  public static String text(JsonNode value) {
    return value.isNumber()
        ? value.decimalValue().stripTrailingZeros().toPlainString()
        : value.asText("");
  }

  /** Where a number stands that no double holds, such as 1e999; its keys with dots. */
  private static Optional<String> beyondNumbers(JsonNode node, String place) {
    if (node.isNumber() && !Double.isFinite(node.doubleValue())) {
      return Optional.of(place);
    }
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        Optional<String> beyond = beyondNumbers(node.get(i), place + "[" + i + "]");
        if (beyond.isPresent()) {
          return beyond;
        }
      }
    }
    for (Map.Entry<String, JsonNode> key : node.properties()) {
      String inner = place.isEmpty() ? key.getKey() : place + "." + key.getKey();
      Optional<String> beyond = beyondNumbers(key.getValue(), inner);
      if (beyond.isPresent()) {
        return beyond;
      }
    }
    return Optional.empty();
  }

  private static byte[] withoutMark(byte[] bytes) {
    boolean marked =
        bytes.length >= 3
            && bytes[0] == (byte) 0xEF
            && bytes[1] == (byte) 0xBB
            && bytes[2] == (byte) 0xBF;
    return marked ? Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
  }

  // the parser's later sentences speak of its own settings
  private static String firstSentence(String message) {
    String plain = message.replaceAll("\\p{Cntrl}", " ");
    int end = plain.indexOf(": ");
    String first = end > 0 ? plain.substring(0, end) : plain;
    return first.length() <= 120 ? first : first.substring(0, 120) + "…";
  }
}
