package faintwind.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.Main;
import faintwind.files.design.DesignFile;
import faintwind.job.design.DesignWork;
import faintwind.job.design.Sized;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.choice.DesignField;
import faintwind.physics.choice.PartFields;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every field of a design, in the file, in the form and on the command line. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DesignFieldsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path START = Path.of("src/test/resources/design/half-inch-copper.json");

  private final Messages words = Messages.of(Locale.ENGLISH);
  private final DesignWork work = value(DesignWork.open(Optional.empty()));

  /** A design that has something to say of every field. */
  private final Sized full =
      filled(value(work.with(value(work.read(Files.readString(START))), all())));

  private Path file = START;

  DesignFieldsTest() throws IOException {}

  private static Map<DesignField, String> all() {
    Map<DesignField, String> all = new LinkedHashMap<>();
    all.put(DesignField.COAT, "gold");
    all.put(DesignField.REGULATOR, "switching");
    all.put(DesignField.HEATED_DEPTH, "10");
    all.put(DesignField.LOGGER, "own");
    return all;
  }

  /** With the middle of its range for each number that has no usual value and is not said yet. */
  private Sized filled(Sized design) {
    Map<DesignField, String> more = new LinkedHashMap<>();
    for (DesignField each : DesignField.values()) {
      boolean open =
          PartFields.applies(each, design.design()) && each.of(design.design()).isEmpty();
      if (open && each != DesignField.POWER) { // the resistance is said
        each.field()
            .range()
            .ifPresent(r -> more.put(each, Field.plain((r.least() + r.most()) / 2)));
      }
    }
    return value(work.with(design, more));
  }

  private static <T> T value(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  @BeforeAll
  void writeTheFile(@TempDir Path folder) throws IOException {
    file = Files.writeString(folder.resolve("design.json"), full.text());
  }

  /** A text at an edge of a field's range, and whether it may be said. */
  record Edge(DesignField field, String text, boolean allowed) {}

  static Stream<Edge> edges() {
    return Arrays.stream(DesignField.values())
        .filter(f -> f.field().range().isPresent())
        .flatMap(DesignFieldsTest::edges);
  }

  private static Stream<Edge> edges(DesignField field) {
    Field.Range range = field.field().range().orElseThrow();
    return Stream.of(
        new Edge(field, Field.plain(range.least() - step(range, range.least())), false),
        new Edge(field, Field.plain(range.least()), true),
        new Edge(field, Field.plain(range.most()), true),
        new Edge(field, Field.plain(range.most() + step(range, range.most())), false));
  }

  private static double step(Field.Range range, double edge) {
    return range.whole() ? 1 : Math.max(1e-4, 1e-6 * Math.abs(edge));
  }

  @ParameterizedTest
  @MethodSource("edges")
  void fileFormAndCommandLineRefuseTheSameInTheSameWords(Edge edge) throws IOException {
    List<String> fromFile = refused(DesignFile.parse(with(edge), work.parts()));
    assertThat(refused(work.with(full, typed(edge)))).isEqualTo(fromFile);
    // a file that is there already is refused before anything is worked out
    String said =
        commandLine(
            "--parts", file.toString(), "--set", edge.field().field().id() + "=" + edge.text());
    assertThat(fromFile).hasSize(edge.allowed() ? 0 : 1).allMatch(said::contains);
    if (edge.allowed()) {
      assertThat(said).doesNotContain("is outside its range");
    }
  }

  /** What the fields refuse, apart from what the design as a whole refuses. */
  private List<String> refused(Checked<?> checked) {
    return checked.problems().stream()
        .filter(Problem::isError)
        .filter(p -> p.id().startsWith("field."))
        .map(words::sentence)
        .toList();
  }

  private String with(Edge edge) throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(full.text());
    String[] path = edge.field().field().id().split("\\.", -1);
    ObjectNode group = root;
    for (int i = 0; i < path.length - 1; i++) {
      group = group.withObjectProperty(path[i]);
    }
    group.set(path[path.length - 1], JSON.readTree(edge.text()));
    return root.toString();
  }

  /** Typed into its box, where the form has one. */
  private Map<DesignField, String> typed(Edge edge) {
    if (!DesignChoices.form().contains(edge.field())) {
      return Map.of(edge.field(), edge.text());
    }
    DesignChoices choices = new DesignChoices(words);
    choices.show(full.design());
    choices.number(edge.field()).set(edge.text());
    return choices.said(edge.field());
  }

  private String commandLine(String... more) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Terminal terminal = Terminal.of(new ByteArrayInputStream(new byte[0]), out, out, words);
    Main.run(
        terminal,
        Stream.concat(Stream.of("size", file.toString(), "--json"), Stream.of(more))
            .toArray(String[]::new));
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void everyFieldIsSaidByTheDesignOrLeftToAnother() {
    assertThat(DesignField.values())
        .filteredOn(f -> f.of(full.design()).isEmpty())
        .containsExactlyInAnyOrder(
            DesignField.DIAMETER_IN,
            DesignField.REFERENCE_BORE,
            DesignField.POWER,
            DesignField.LOGGER);
  }

  @ParameterizedTest
  @EnumSource(DesignField.class)
  void whatADesignSaysIsReadAgainFromFileAndForm(DesignField field) throws IOException {
    String said = field.of(full.design());
    assertThat(field.of(value(DesignFile.parse(full.text(), work.parts())))).isEqualTo(said);
    EnumSet<DesignField> takeOthersAlong = EnumSet.of(DesignField.METAL, DesignField.REGULATOR);
    if (!said.isEmpty() && !takeOthersAlong.contains(field)) {
      Sized again = value(work.with(full, Map.of(field, said)));
      assertThat(field.of(again.design())).isEqualTo(said);
    }
    assertThat(words.text(field.field().nameKey())).isNotBlank();
  }

  @Test
  void commandLineTakesEveryFieldAsTheDesignSaysIt() {
    List<String> sets = new ArrayList<>();
    DesignField.texts(full.design())
        .forEach((id, text) -> sets.addAll(List.of("--set", id + "=" + text)));
    String plain = commandLine();
    assertThat(plain).startsWith("{").endsWith("}\n");
    assertThat(commandLine(sets.toArray(String[]::new))).isEqualTo(plain);
    assertThat(commandLine("--set", "ball.diameter_mm=16")).isNotEqualTo(plain);
  }
}
