package faintwind.ui.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.Main;
import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlanTerms;
import faintwind.files.plan.PlanFile;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.Terminal;
import faintwind.ui.part.NumberModel;
import faintwind.ui.work.Background;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every field of a plan, in the file, in the window and on the command line. */
class PlanFieldsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path GALLERY = Path.of("src/test/resources/refused/plan");

  private final Messages words = Messages.of(Locale.ENGLISH);

  /** A text at an edge of a field's range, and whether it may be said. */
  record Edge(PlanField field, String text, boolean allowed) {}

  static Stream<Edge> edges() {
    return Arrays.stream(PlanField.values())
        .filter(f -> f.field().range().isPresent())
        .flatMap(PlanFieldsTest::edges);
  }

  private static Stream<Edge> edges(PlanField field) {
    Field.Range range = field.field().range().orElseThrow();
    double step = range.whole() ? 1 : 1e-3;
    return Stream.of(
        new Edge(field, Field.plain(range.least() - step), false),
        new Edge(field, Field.plain(range.least()), true),
        new Edge(field, Field.plain(range.most()), true),
        new Edge(field, Field.plain(range.most() + step), false));
  }

  private static Map<String, String> said(PlanField field, String text) {
    Map<String, String> said = new HashMap<>(PlanField.usual());
    said.put(field.field().id(), text);
    return said;
  }

  @ParameterizedTest
  @MethodSource("edges")
  void fileWindowAndCommandLineRefuseTheSameInTheSameWords(Edge edge) throws IOException {
    List<String> core =
        refused(PlanTerms.of(said(edge.field(), edge.text()), field -> Where.NOWHERE).problems());
    assertThat(core).hasSize(edge.allowed() ? 0 : 1);
    assertThat(refused(PlanFile.parse(file(edge), "plan.json").problems())).isEqualTo(core);
    String told = commandLine(edge);
    List<String> window = window(edge).orElse(core);
    if (edge.allowed()) {
      assertThat(told).doesNotContain("is outside its range");
      assertThat(window).noneMatch(s -> s.contains("is outside its range"));
    } else {
      assertThat(told).contains(core.get(0));
      assertThat(window).isEqualTo(core);
    }
  }

  private List<String> refused(List<Problem> problems) {
    return problems.stream().filter(p -> p.id().startsWith("field.")).map(words::sentence).toList();
  }

  /** A plan file whose only fault is the text. */
  private static String file(Edge edge) throws IOException {
    ObjectNode root =
        (ObjectNode) JSON.readTree(GALLERY.resolve("range-turned-round.json").toFile());
    root.withObjectProperty("wish").put("from_m_s", 0.1);
    String[] path = edge.field().path().split("\\.", -1);
    String key = path[path.length - 1];
    double value = edge.field().perUnit() * Double.parseDouble(edge.text());
    JsonNode number =
        edge.field().field().range().orElseThrow().whole()
            ? JSON.getNodeFactory().numberNode((int) value)
            : DoubleNode.valueOf(value);
    ObjectNode group = path.length > 1 ? root.withObjectProperty(path[0]) : root;
    if (path.length > 2) {
      ArrayNode items = group.withArrayProperty(path[1]);
      ((ObjectNode) items.get(0)).set(key, number);
    } else if (edge.field().isList()) {
      group.putArray(key).add(number);
    } else {
      group.set(key, number);
    }
    return root.toString();
  }

  /** The output is there already, so that nothing is planned. */
  private String commandLine(Edge edge) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Terminal terminal = Terminal.of(new ByteArrayInputStream(new byte[0]), out, out, words);
    String[] both = {edge.field().option() + "=" + edge.text()};
    String[] withRadius = {"--radius-mm=600", both[0]};
    Main.run(
        terminal,
        Stream.concat(
                Stream.of("plan", "design.json", "--out", "pom.xml"),
                Arrays.stream(edge.field() == PlanField.RADIUS ? both : withRadius))
            .toArray(String[]::new));
    return out.toString(StandardCharsets.UTF_8);
  }

  /** What the window says of it; empty where it has no box. */
  private Optional<List<String>> window(Edge edge) {
    TurntablePlanModel model =
        new TurntablePlanModel(
            words,
            new Background(Runnable::run),
            new TurntablePlanModel.Ways(
                () -> Checked.refused(Problem.error("plan.no-design", Where.NOWHERE, "")),
                kept -> {},
                name -> Optional.empty(),
                ""));
    if (edge.field() == PlanField.RADIUS) {
      model.radii().get(0).set(edge.text());
    } else if (TurntablePlanModel.NUMBERS.contains(edge.field())) {
      NumberModel box = model.number(edge.field());
      box.set(edge.text());
      if (edge.field() == PlanField.CABLE_TURNS) {
        model.way().set(DataWay.Kind.CABLE);
      }
    } else {
      return Optional.empty();
    }
    model.plan();
    return Optional.of(model.view().get().problems());
  }

  @ParameterizedTest
  @EnumSource(PlanField.class)
  void everyFieldHasANameAndAnOptionWithWords(PlanField field) {
    assertThat(words.text(field.field().nameKey())).isNotBlank();
    String option = field == PlanField.DIRECTIONS ? "one-way" : field.option().substring(2);
    assertThat(words.text("faintwind.plan." + option)).isNotBlank();
  }
}
