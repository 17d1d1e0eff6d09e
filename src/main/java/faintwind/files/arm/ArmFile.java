package faintwind.files.arm;

import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.Uncertain;
import faintwind.files.AtomicFile;
import faintwind.files.JsonFile;
import faintwind.files.JsonForm;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The record of an arm, format {@code faintwind-arm/1}, described in docs/formats/arm.md: what the
 * calibrations on it showed, and what that says of the next.
 */
public final class ArmFile {
  private static final String FORMAT = "faintwind-arm/1";
  private static final String ANY = "faintwind-arm/";
  private static final JsonForm FORM = new JsonForm(Map.of());

  private ArmFile() {}

  private record Stored(String format, Map<String, Value> expected, List<Session> sessions) {}

  private record Value(
      double value, double standardUncertainty, Optional<Double> between, String unit) {}

  private record Session(
      String instrumentId, String counted, List<String> inputsSha256, Map<String, Value> shown) {}

  /** Whether a file that can be read says that it is one. */
  public static boolean is(Path file) throws IOException {
    return Files.isRegularFile(file)
        && JsonFile.read(file, "")
            .fold((node, notes) -> node.path("format").asText().startsWith(ANY), p -> false);
  }

  /**
   * The sessions of an arm.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<List<ArmSession>> read(Path file) throws IOException {
    return JsonFile.read(file, file.toString()).then(node -> sessions(node, file.toString()));
  }

  private static Checked<List<ArmSession>> sessions(ObjectNode node, String name) {
    Where where = Where.file(name);
    String format = node.path("format").asText();
    if (!format.equals(FORMAT)) {
      String id = format.startsWith(ANY) ? "arm.newer" : "arm.not-one";
      return Checked.refused(Problem.error(id, where.atColumn("format"), format, FORMAT));
    }
    List<Problem> problems = SchemaCheck.of("arm").problems(node, where);
    return problems.isEmpty()
        ? Checked.ok(
            FORM.read(node, Stored.class).sessions().stream().map(ArmFile::session).toList())
        : Checked.refused(problems);
  }

  /**
   * Puts the record in the file's place, whole or not at all.
   *
   * @throws IOException where the disk or a permission fails
   */
  public static void write(Path file, List<ArmSession> sessions) throws IOException {
    AtomicFile.write(file, text(sessions).getBytes(StandardCharsets.UTF_8));
  }

  /** What {@link #write} puts into the file. */
  public static String text(List<ArmSession> sessions) {
    List<ArmKnown> shown = sessions.stream().map(ArmSession::shown).toList();
    Map<String, Value> expected = new LinkedHashMap<>();
    ArmKnown.ofSessions(shown)
        .ifPresent(next -> expected.putAll(values(next, ArmKnown.spread(shown))));
    List<Session> stored = new ArrayList<>();
    for (ArmSession each : sessions) {
      stored.add(
          new Session(
              each.instrumentId(),
              each.counted(),
              each.inputsSha256(),
              values(each.shown(), Optional.empty())));
    }
    return FORM.write(new Stored(FORMAT, expected, stored)).toPrettyString() + "\n";
  }

  private static Map<String, Value> values(ArmKnown arm, Optional<ArmKnown> spread) {
    Map<String, Value> values = new LinkedHashMap<>();
    values.put("carried_share", value(arm.carriedShare(), spread.map(ArmKnown::carriedShare), "1"));
    values.put("carried_rise", value(arm.rise_s(), spread.map(ArmKnown::rise_s), "s"));
    values.put("carried_decay", value(arm.decay_s(), spread.map(ArmKnown::decay_s), "s"));
    values.put("run_up", value(arm.runUp_s(), spread.map(ArmKnown::runUp_s), "s"));
    arm.asymmetry()
        .ifPresent(
            found ->
                values.put("asymmetry", value(found, spread.flatMap(ArmKnown::asymmetry), "1")));
    return values;
  }

  private static Value value(Uncertain found, Optional<Uncertain> spread, String unit) {
    return new Value(
        found.value(), found.u().orElse(0), spread.map(each -> each.u().orElse(0)), unit);
  }

  private static ArmSession session(Session stored) {
    Map<String, Value> shown = stored.shown();
    return new ArmSession(
        stored.instrumentId(),
        stored.counted(),
        stored.inputsSha256(),
        new ArmKnown(
            uncertain(shown, "carried_share").orElseThrow(),
            uncertain(shown, "carried_rise").orElseThrow(),
            uncertain(shown, "carried_decay").orElseThrow(),
            uncertain(shown, "run_up").orElseThrow(),
            uncertain(shown, "asymmetry")));
  }

  private static Optional<Uncertain> uncertain(Map<String, Value> shown, String name) {
    return Optional.ofNullable(shown.get(name))
        .map(each -> Uncertain.of(each.value(), each.standardUncertainty()));
  }
}
