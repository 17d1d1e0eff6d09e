package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.files.JsonFile;
import faintwind.files.SchemaCheck;
import faintwind.job.WriteExample;
import faintwind.job.formula.Profiles;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Where;
import faintwind.terminal.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The examples of the format pages and of {@code faintwind example}, each read by the program. */
class FormatPagesTest {
  private static final Path PAGES = Path.of("docs/formats");
  private static final Pattern BLOCK = Pattern.compile("(?s)```(\\w*)\n(.*?)```");

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    Terminal terminal =
        Terminal.of(InputStream.nullInputStream(), out, err, Messages.of(Locale.ENGLISH));
    return Main.run(terminal, arguments);
  }

  private String told() {
    return out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
  }

  private static String block(String page) throws IOException {
    Matcher matcher = BLOCK.matcher(Files.readString(PAGES.resolve(page + ".md")));
    List<String> blocks = new ArrayList<>();
    while (matcher.find()) {
      blocks.add(matcher.group(2));
    }
    assertThat(blocks).as(page).isNotEmpty();
    return blocks.get(blocks.size() - 1);
  }

  @TestFactory
  Stream<DynamicTest> everyJsonExampleFitsItsSchema() {
    Map<String, String> schemas =
        Map.of(
            "design", "design",
            "chain", "chain",
            "class", "class",
            "meter", "meter",
            "plan", "plan",
            "arm", "arm",
            "profile", "profile",
            "checklist", "step");
    return schemas.entrySet().stream()
        .map(
            page ->
                DynamicTest.dynamicTest(
                    page.getKey(), () -> fits(block(page.getKey()), page.getValue())));
  }

  private static void fits(String json, String schema) throws IOException {
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    assertThat(
            JsonFile.parse(bytes, "page")
                .then(
                    node -> {
                      var problems = SchemaCheck.of(schema).problems(node, Where.NOWHERE);
                      return problems.isEmpty() ? Checked.ok("read") : Checked.refused(problems);
                    })
                .problems())
        .isEmpty();
  }

  @Test
  void examplesOfThePagesAreThoseOfTheCommand() throws IOException {
    assertThat(block("design")).isEqualTo(WriteExample.text(WriteExample.Kind.DESIGN));
    assertThat(block("runs-table")).isEqualTo(WriteExample.text(WriteExample.Kind.RUNS));
    assertThat(block("points")).isEqualTo(WriteExample.text(WriteExample.Kind.POINTS));
    assertThat(block("places")).isEqualTo(WriteExample.text(WriteExample.Kind.PLACES));
  }

  /** By hand for the 1/7 power law: 49/60 · 1 m/s · π/4 · 0.315² m² · 3600 s/h = 229 m³/h. */
  @Test
  void thePointsGiveTheFlowOfTheirPage() throws IOException {
    assertThat(run("flow", example("points").toString())).as(told()).isZero();
    Matcher flow = Pattern.compile("Flow: (\\d+) ± (\\d+) m³/h").matcher(told());
    assertThat(flow.find()).as(told()).isTrue();
    assertThat(Double.parseDouble(flow.group(1))).isBetween(0.98 * 229, 1.02 * 229);
    assertThat(Files.readString(PAGES.resolve("points.md")))
        .contains(flow.group(1) + " ± " + flow.group(2) + " m³/h");
  }

  @Test
  void thePlacesAreRanked() throws IOException {
    assertThat(run("survey", example("places").toString())).as(told()).isZero();
    assertThat(told())
        .contains("Rank 1: door", "Rank 1: hatch", "Rank 3: window sill", "Rank 4: corner");
  }

  @Test
  void theDesignIsSized() throws IOException {
    Path design = example("design");
    assertThat(run("size", design.toString())).as(told()).isZero();
  }

  @Test
  void theRunsTableAndTheLogAreSound() throws IOException {
    Path log = example("log");
    assertThat(run("check", log.toString())).as(told()).isZero();
    StringBuilder session = new StringBuilder("time_s,signal_uV\n");
    for (int i = 0; i < 6600; i++) {
      session.append(i).append(",1000.").append(i % 7).append('\n');
    }
    Files.writeString(folder.resolve("session.csv"), session);
    Files.writeString(folder.resolve("off.csv"), session.substring(0, 5000) + "\n");
    Path runs = example("runs");
    assertThat(run("check", runs.toString())).as(told()).isZero();
  }

  @Test
  void theProfileReadsALineOfItsLogger() throws IOException {
    Path profile = example("profile");
    assertThat(Profiles.find(profile.toString()).problems()).isEmpty();
  }

  @Test
  void nothingIsReplacedUnasked() throws IOException {
    Path design = example("design");
    assertThat(run("example", "design", "--out", design.toString())).isEqualTo(2);
    assertThat(run("example", "design", "--out", design.toString(), "--force")).isZero();
    run("example", "log");
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains(WriteExample.text(WriteExample.Kind.LOG));
  }

  private Path example(String kind) {
    String ending = kind.equals("design") || kind.equals("profile") ? ".json" : ".csv";
    Path target = folder.resolve(kind + ending);
    assertThat(run("example", kind, "--out", target.toString())).isZero();
    return target;
  }
}
