package faintwind.files.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.response.TypeLetter;
import faintwind.calibration.run.SignalChain;
import faintwind.files.JsonFile;
import faintwind.files.JsonForm;
import faintwind.files.NumberCell;
import faintwind.files.ProblemList;
import faintwind.message.Checked;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.function.DoublePredicate;

/**
 * Reads {@code chain.json}: what stands between the junctions and the file. Format in
 * docs/formats/chain.md. Every key is optional; an unknown key is told as a note.
 */
public final class ChainFile {
  /** Name of the file beside a runs table. */
  public static final String NAME = "chain.json";

  private static final Set<String> KEYS =
      Set.of("input", "type", "gain", "offset", "sign", "range", "bits", "noise", "note");
  private static final Set<String> INPUTS = Set.of("voltage", "difference_K", "compensated_C");
  private static final JsonForm FORM = new JsonForm(ChainForm.TYPES);

  private final ObjectNode node;
  private final Where where;
  private final ProblemList problems = new ProblemList();

  private ChainFile(ObjectNode node, Where where) {
    this.node = node.deepCopy();
    this.where = where;
  }

  /**
   * Reads the file.
   *
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<SignalChain> read(Path path, String name) throws IOException {
    return JsonFile.read(path, name).then(node -> new ChainFile(node, Where.file(name)).chain());
  }

  private Checked<SignalChain> chain() {
    node.fieldNames()
        .forEachRemaining(
            key -> {
              if (!KEYS.contains(key)) {
                problems.warning("chain.key-unknown", where.atColumn(key), key);
              }
            });
    number("range", v -> v > 0, "chain.not-positive");
    number("bits", v -> v == Math.rint(v) && v >= 1 && v <= 64, "chain.bits");
    number("noise", v -> v >= 0, "chain.negative");
    input();
    type();
    number("gain", v -> v > 0, "chain.not-positive");
    number("offset", v -> true, "");
    sign();
    return problems.hasErrors()
        ? Checked.refused(problems.list())
        : Checked.ok(FORM.read(node, SignalChain.class), problems.list());
  }

  private void input() {
    if (!node.hasNonNull("input")) {
      node.put("input", "voltage");
    }
    String word = node.get("input").asText();
    if (!INPUTS.contains(word)) {
      problems.error("chain.input-unknown", where.atColumn("input"), word);
    }
  }

  private void type() {
    if (node.hasNonNull("type")) {
      String word = node.get("type").asText();
      String letter = word.strip().toUpperCase(Locale.ROOT);
      if (TypeLetter.of(letter).isEmpty()) {
        problems.error("chain.type-unknown", where.atColumn("type"), word, TypeLetter.known());
      }
      node.put("type", letter);
    }
  }

  private void sign() {
    if (!node.hasNonNull("sign")) {
      node.put("sign", 1);
    }
    JsonNode value = node.get("sign");
    if (!value.isNumber() || Math.abs(value.doubleValue()) != 1) {
      problems.error("chain.sign", where.atColumn("sign"), value.asText());
    }
  }

  private void number(String key, DoublePredicate allowed, String id) {
    if (!node.hasNonNull(key)) {
      return;
    }
    JsonNode value = node.get(key);
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      problems.error("chain.not-a-number", where.atColumn(key), value.asText());
    } else if (!allowed.test(value.doubleValue())) {
      problems.error(id, where.atColumn(key), NumberCell.shown(value.doubleValue()));
    }
  }
}
