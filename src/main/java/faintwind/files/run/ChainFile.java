package faintwind.files.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.response.TypeLetter;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalChain.Input;
import faintwind.files.JsonFile;
import faintwind.files.NumberCell;
import faintwind.files.ProblemList;
import faintwind.message.Checked;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Reads {@code chain.json}: what stands between the junctions and the file. Format in
 * docs/formats/chain.md. Every key is optional; an unknown key is told as a note.
 */
public final class ChainFile {
  /** Name of the file beside a runs table. */
  public static final String NAME = "chain.json";

  private static final Set<String> KEYS =
      Set.of("input", "type", "gain", "offset", "sign", "range", "bits", "noise", "note");

  private final ObjectNode node;
  private final Where where;
  private final ProblemList problems = new ProblemList();

  private ChainFile(ObjectNode node, Where where) {
    this.node = node;
    this.where = where;
  }

  /**
   * Reads the file.
   *
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<SignalChain> read(Path path, String name) throws IOException {
    return JsonFile.read(path, name).then(node -> of(node, Where.file(name)));
  }

  static Checked<SignalChain> of(ObjectNode node, Where where) {
    return new ChainFile(node, where).chain();
  }

  private Checked<SignalChain> chain() {
    node.fieldNames()
        .forEachRemaining(
            key -> {
              if (!KEYS.contains(key)) {
                problems.warning("chain.key-unknown", where.atColumn(key), key);
              }
            });
    SignalChain.Resolution resolution =
        new SignalChain.Resolution(positive("range"), bits(), notNegative("noise"));
    SignalChain chain =
        new SignalChain(input(), type(), positive("gain"), number("offset"), sign(), resolution);
    return problems.hasErrors()
        ? Checked.refused(problems.list())
        : Checked.ok(chain, problems.list());
  }

  private Input input() {
    if (!node.hasNonNull("input")) {
      return Input.VOLTAGE;
    }
    String found = node.get("input").asText();
    for (Input input : Input.values()) {
      if (word(input).equals(found)) {
        return input;
      }
    }
    problems.error("chain.input-unknown", where.atColumn("input"), found);
    return Input.VOLTAGE;
  }

  /** The word that stands for an input in the file. */
  static String word(Input input) {
    return switch (input) {
      case VOLTAGE -> "voltage";
      case DIFFERENCE_K -> "difference_K";
      case COMPENSATED_C -> "compensated_C";
    };
  }

  private Optional<String> type() {
    if (!node.hasNonNull("type")) {
      return Optional.empty();
    }
    String found = node.get("type").asText().strip().toUpperCase(Locale.ROOT);
    if (TypeLetter.of(found).isEmpty()) {
      problems.error(
          "chain.type-unknown",
          where.atColumn("type"),
          node.get("type").asText(),
          TypeLetter.known());
    }
    return Optional.of(found);
  }

  private int sign() {
    if (!node.hasNonNull("sign")) {
      return 1;
    }
    JsonNode value = node.get("sign");
    if (!value.isNumber() || Math.abs(value.doubleValue()) != 1) {
      problems.error("chain.sign", where.atColumn("sign"), value.asText());
      return 1;
    }
    return (int) value.doubleValue();
  }

  private OptionalInt bits() {
    OptionalDouble bits = number("bits");
    if (bits.isEmpty()) {
      return OptionalInt.empty();
    }
    double value = bits.getAsDouble();
    if (value != Math.rint(value) || value < 1 || value > 64) {
      problems.error("chain.bits", where.atColumn("bits"), NumberCell.shown(value));
    }
    return OptionalInt.of((int) value);
  }

  private OptionalDouble positive(String key) {
    OptionalDouble value = number(key);
    if (value.isPresent() && value.getAsDouble() <= 0) {
      problems.error("chain.not-positive", where.atColumn(key), shown(value));
    }
    return value;
  }

  private OptionalDouble notNegative(String key) {
    OptionalDouble value = number(key);
    if (value.isPresent() && value.getAsDouble() < 0) {
      problems.error("chain.negative", where.atColumn(key), shown(value));
    }
    return value;
  }

  private OptionalDouble number(String key) {
    if (!node.hasNonNull(key)) {
      return OptionalDouble.empty();
    }
    JsonNode value = node.get(key);
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      problems.error("chain.not-a-number", where.atColumn(key), value.asText());
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value.doubleValue());
  }

  private static String shown(OptionalDouble value) {
    return NumberCell.shown(value.orElseThrow());
  }
}
