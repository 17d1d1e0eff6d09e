package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import faintwind.Main;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What commands say to other programs: JSON, completion, pages for man; and their help. */
class ForOtherProgramsTest {
  private static final String DEMO = "demo-projects/cellar";
  private static final String CALIBRATION = DEMO + "/calibrations/2026-09-13.json";

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    out.reset();
    err.reset();
    Terminal terminal =
        Terminal.of(InputStream.nullInputStream(), out, err, Messages.of(Locale.ENGLISH));
    return Main.run(terminal, arguments);
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private JsonNode json() throws IOException {
    return JsonMapper.builder().build().readTree(said());
  }

  @Test
  void checkTellsEachProblemWithItsPlace() throws IOException {
    assertThat(run("check", CALIBRATION, "--json")).isZero();
    assertThat(json().path("kind").asText()).isEqualTo("calibration");
    assertThat(json().path("errors").asInt(-1)).isZero();
    Path bad = folder.resolve("bad.json");
    Files.writeString(
        bad, Files.readString(Path.of(CALIBRATION)).replace("\"rows\" :", "\"lines\" :"));
    assertThat(run("check", bad.toString(), "--json")).isEqualTo(3);
    JsonNode problem = json().path("problems").path(0);
    assertThat(problem.path("id").asText()).isEqualTo("json.key-missing");
    assertThat(problem.path("place").path("column").asText()).startsWith("residuals");
    assertThat(problem.path("text").asText()).isNotEmpty();
  }

  @Test
  void stepsTellsWhatCanBeDoneNow() throws IOException {
    assertThat(run("steps", "demo-projects/ripening-room", "--json")).isZero();
    assertThat(json().path("format").asText()).isEqualTo("faintwind-steps/1");
    assertThat(json().path("now").size() + json().path("later").size()).isPositive();
  }

  @Test
  void convertTellsItsSummaryBesideTheSpeeds() throws IOException {
    String log = DEMO + "/logs/north-shelf-day.csv";
    String target = folder.resolve("speeds.csv").toString();
    assertThat(run("convert", CALIBRATION, log, "--out", target, "--json")).isZero();
    JsonNode told = json().path("logs").path(0);
    assertThat(told.path("rows").path("all").asInt()).isEqualTo(8641);
    assertThat(told.path("speeds").path("highest_m_s").asDouble()).isPositive();
  }

  @Test
  void helpNamesACommandAndAnUnknownOptionComesFirst() {
    assertThat(run("help")).isZero();
    assertThat(said()).contains("export", "example");
    assertThat(run("help", "convert")).isZero();
    assertThat(said()).contains("faintwind convert");
    assertThat(run("convert", "--wrong")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("--wrong").doesNotContain("Missing");
  }

  @Test
  void everyCommandHasAPageForMan() {
    run("help");
    for (String line : said().lines().dropWhile(l -> !l.startsWith("Commands")).skip(1).toList()) {
      if (line.startsWith("  ") && !line.startsWith("   ")) {
        String command = line.strip().split(" ", 2)[0];
        ByteArrayOutputStream page = new ByteArrayOutputStream();
        Terminal terminal =
            Terminal.of(InputStream.nullInputStream(), page, err, Messages.of(Locale.ENGLISH));
        assertThat(Main.run(terminal, "man", command)).isZero();
        assertThat(page.toString(StandardCharsets.UTF_8))
            .startsWith(".TH FAINTWIND-" + command.toUpperCase(Locale.ROOT))
            .contains(".SH NAME", ".SH OPTIONS")
            .doesNotContain("''");
      }
    }
    assertThat(run("man", "nonsense")).isEqualTo(2);
  }

  @Test
  void completionKnowsEveryCommand() {
    assertThat(run("completion")).isZero();
    assertThat(said()).contains("complete ", "convert", "export", "--average-s");
  }

  @Test
  void anExportIsNotWrittenOverAFileNorOfWhatIsNoCalibration() throws IOException {
    Path target = Files.writeString(folder.resolve("mine.h"), "mine");
    assertThat(run("export", CALIBRATION, "--as", "c", "--out", target.toString())).isEqualTo(2);
    assertThat(Files.readString(target)).isEqualTo("mine");
    String other = folder.resolve("other.h").toString();
    assertThat(run("export", "pom.xml", "--as", "c", "--out", other)).isEqualTo(3);
    assertThat(Path.of(other)).doesNotExist();
    assertThat(run("export", CALIBRATION, "--as", "basic", "--out", other)).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("micropython");
  }
}
