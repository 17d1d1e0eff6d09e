package faintwind.files.calibration;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.Calibration;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.files.AtomicFile;
import faintwind.files.JsonFile;
import faintwind.files.JsonForm;
import faintwind.files.SchemaCheck;
import faintwind.files.run.ChainForm;
import faintwind.files.run.LogHead;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Calibration files, format {@code faintwind-calibration/1}, described in
 * docs/formats/calibration.md. Numbers come back exactly as they went in. What is written has been
 * compared with the shipped schema first; what is read is compared with it too. Keys that this
 * version does not know are passed over.
 */
public final class CalibrationFile {
  private static final Pattern ANY_FORMAT =
      Pattern.compile("faintwind-calibration/(\\d{1,6})(\\.\\d+)?");

  private static final JsonForm FORM = form();

  /** Read once: a workspace holds hundreds of calibrations. */
  private static final SchemaCheck SCHEMA = SchemaCheck.of("calibration");

  private CalibrationFile() {}

  /**
   * Prepares what every reading needs, the schema and the binding: most of what the first one
   * takes. From any thread; a reading that begins meanwhile waits for it.
   */
  public static void prepare() {
    FORM.prepare(StoredCalibration.class);
  }

  /** The keys of the signal. */
  interface SignalForm {
    @JsonProperty("signal_unit")
    SignalUnit unit();

    @JsonProperty("signal_per_K")
    double perKelvin();
  }

  /** A unit is named as the column of a run file. */
  interface UnitForm {
    @JsonValue
    String column();
  }

  private static JsonForm form() {
    Map<Class<?>, Class<?>> forms = new HashMap<>(ChainForm.TYPES);
    forms.put(SignalPath.class, SignalForm.class);
    forms.put(SignalUnit.class, UnitForm.class);
    return new JsonForm(forms);
  }

  /**
   * Puts a calibration in the file's place, whole or not at all. Its words are English whatever the
   * program speaks: the file is the same in every language.
   *
   * @throws IOException where the disk or a permission fails
   * @throws IllegalArgumentException where the calibration does not fit the schema, such as a
   *     number that is not finite; nothing is written
   */
  public static void write(Path target, Calibration calibration) throws IOException {
    AtomicFile.write(target, bytes(calibration));
  }

  /** What {@link #write} puts into the file. */
  public static byte[] bytes(Calibration calibration) throws IOException {
    ObjectNode json = FORM.write(StoredCalibration.of(calibration));
    json.setAll(FORM.write(StoredFormula.of(calibration)));
    // numbers that are not finite become words in JSON: reading back finds them too
    byte[] bytes = text(json).getBytes(StandardCharsets.UTF_8);
    List<Problem> problems = parse(bytes, "").problems();
    if (problems.stream().anyMatch(Problem::isError)) {
      throw new IllegalArgumentException("calibration does not fit its schema: " + problems);
    }
    return bytes;
  }

  /** The part of the file that turns signals into speeds, on one line, for an exported reader. */
  public static String forReader(Calibration calibration) throws IOException {
    ObjectNode json = (ObjectNode) JsonMapper.builder().build().readTree(bytes(calibration));
    json.retain(StoredFormula.FOR_READER);
    json.withObject("performance").remove("speeds");
    return json.toString();
  }

  /**
   * Reads a calibration.
   *
   * @param name how messages name the file
   * @throws IOException where the disk or a permission fails; a file that is not there is refused
   */
  public static Checked<Calibration> read(Path path, String name) throws IOException {
    return JsonFile.read(path, name).then(node -> checked(node, Where.file(name)));
  }

  /** Some keys of a file that is known to be a calibration. */
  static <T> T part(ObjectNode file, Class<T> type) {
    return FORM.read(file, type);
  }

  /** The same of the bytes of a file. */
  public static Checked<Calibration> parse(byte[] bytes, String name) throws IOException {
    return JsonFile.parse(bytes, name).then(node -> checked(node, Where.file(name)));
  }

  private static Checked<Calibration> checked(ObjectNode node, Where where) {
    String format = node.path("format").asText();
    Matcher matcher = ANY_FORMAT.matcher(format);
    if (!matcher.matches()) {
      return Checked.refused(
          Problem.error("calibration.not-one", where.atColumn("format"), LogHead.excerpt(format)));
    }
    if (Integer.parseInt(matcher.group(1)) != 1) {
      return Checked.refused(
          Problem.error(
              "calibration.newer", where.atColumn("format"), format, StoredCalibration.FORMAT));
    }
    List<Problem> problems = new ArrayList<>(SCHEMA.problems(node, where));
    if (problems.isEmpty()) {
      problems.addAll(CalibrationRules.problems(node, where));
    }
    return problems.isEmpty()
        ? Checked.ok(
            FORM.read(node, StoredCalibration.class).toModel(), CalibrationRules.notes(node, where))
        : Checked.refused(problems);
  }

  private static String text(ObjectNode json) throws JsonProcessingException {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    ObjectWriter writer =
        JsonMapper.builder().build().writer(new DefaultPrettyPrinter().withObjectIndenter(lines));
    return writer.writeValueAsString(json) + "\n";
  }
}
