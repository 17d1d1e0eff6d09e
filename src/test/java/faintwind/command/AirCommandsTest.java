package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code summary}, {@code opening}, {@code flow} and {@code survey} as they are typed. */
class AirCommandsTest {
  @TempDir Path folder;
  private final Shell shell = new Shell();

  /** Ten minutes at each of four places: 0.1, 0.3, 0.31 and 0.1 m/s. */
  private Path speeds() throws IOException {
    StringBuilder text = new StringBuilder("# start: 2026-09-19T18:30:00+02:00\n");
    text.append("time_s,signal_uV,speed_m_s,u95_m_s,flag\n");
    double[] places = {0.1, 0.3, 0.31, 0.1};
    for (int t = 0; t < 2400; t += 5) {
      double v = places[t / 600] + 0.0002 * (t / 5 % 3);
      text.append(String.format(Locale.ROOT, "%d,1000,%.5f,%.5f,%n", t, v, 0.06 * v));
    }
    return Files.writeString(folder.resolve("speeds.csv"), text);
  }

  private JsonNode json(Path file) throws IOException {
    return new ObjectMapper().readTree(file.toFile());
  }

  @Test
  void summaryIsToldWrittenAndDrawn() throws IOException {
    Path table = folder.resolve("summary.csv");
    Path svg = folder.resolve("summary.svg");
    Path png = folder.resolve("summary.png");
    assertThat(
            shell.run(
                "summary", speeds(), "--limit", "0.2,0.305", "--out", table, "--picture", svg))
        .as(shell.said())
        .isZero();
    assertThat(shell.said())
        .contains("Mean: 0.203 ± 0.012 m/s", "Hour from 19 September 2026, 18:00:00");
    assertThat(Files.readString(table))
        .startsWith("figure,at,value,u95,least,most,unit\n")
        .contains("\nabove,0.2,0.5,,0.5,0.5,share\n")
        .contains("hour,2026-09-19T18:00+02:00,");
    String page = Files.readString(Path.of("docs/formats/summary.md"));
    String whole = page.substring(page.indexOf("```csv\n") + 7, page.lastIndexOf("```"));
    assertThat(Files.readAllLines(table)).containsAll(whole.lines().toList());
    assertThat(Files.readString(svg)).startsWith("<?xml").contains("xmlns=", "What the air did");
    assertThat(shell.run("summary", speeds(), "--picture", png)).isZero();
    BufferedImage image = ImageIO.read(png.toFile());
    assertThat(image.getWidth()).isGreaterThan(1000);
    assertThat(image.getRGB(2, 2)).isEqualTo(0xFFFFFFFF);
    assertThat(shell.run("summary", speeds(), "--out", table)).isEqualTo(2);
    assertThat(shell.run("summary", speeds(), "--picture", folder.resolve("a.jpg"))).isEqualTo(2);
    assertThat(shell.run("summary", speeds(), "--json")).isZero();
    assertThat(shell.said()).contains("\"format\" : \"faintwind-summary/1\"");
  }

  /** Two diameters by 0.3 m/s: flow = 0.3 · π/4 · 0.2² · 3600 m³/h, less what the balls fill. */
  @Test
  void flowFromTypedSpeeds() throws IOException {
    Path points = folder.resolve("points.csv");
    Path result = folder.resolve("flow.json");
    assertThat(
            shell.run(
                "opening",
                "--shape",
                "round",
                "--width-mm",
                200,
                "--ball-mm",
                6,
                "--count",
                3,
                "--out",
                points))
        .as(shell.said())
        .isZero();
    assertThat(shell.said()).contains("Caution", "A1: 6.4 mm deep", "B6: 193.6 mm deep");
    assertThat(shell.run("flow", points)).isEqualTo(3);
    assertThat(shell.said()).contains("\"A1\" has neither times of a log nor a speed");
    fill(points, ",,,,,,", ",,,,0.3,0.02,");
    assertThat(shell.run("flow", points, "--out", result)).as(shell.said()).isZero();
    double filled = 3 * 0.006 * 0.006 / (0.2 * 0.2);
    double expected = 0.3 * Math.PI / 4 * 0.04 * 3600 * (1 - filled / 2);
    JsonNode told = json(result).path("result");
    // the table rounds the area of the instrument to 0.0001 cm²
    double rounded = expected * 0.00005e-4 / (Math.PI / 4 * 0.04);
    assertThat(told.path("flow_m3_h").asDouble()).isCloseTo(expected, within(rounded));
    assertThat(told.path("u95_m3_h").asDouble()).isBetween(0.07 * expected, 0.4 * expected);
    assertThat(json(result).path("inputs").path("points.csv").asText()).hasSize(64);
    assertThat(shell.run("flow", points, "--out", result)).isEqualTo(2);
    fill(points, ",0.3,0.02,", ",0.01,0.02,");
    assertThat(shell.run("flow", points)).isEqualTo(4);
  }

  private static void fill(Path table, String old, String now) throws IOException {
    List<String> lines = Files.readAllLines(table);
    StringBuilder text = new StringBuilder();
    for (String line : lines) {
      boolean row = !line.startsWith("#") && !line.startsWith("point");
      text.append(row ? line.replaceFirst(Pattern.quote(old), now) : line);
      text.append('\n');
    }
    Files.writeString(table, text);
  }

  @Test
  void placesOfALogAreRanked() throws IOException {
    Path places =
        Files.writeString(
            folder.resolve("places.csv"),
            "place,from_s,to_s\nsill,0,600\ndoor,600,1200\nhatch,1200,1800\nsill,1800,2400\n");
    Path calibration = Path.of("demo-projects/cellar/calibrations/2026-09-13.json");
    Path result = folder.resolve("survey.json");
    assertThat(
            shell.run(
                "survey",
                places,
                "--speeds",
                speeds(),
                "--settle-s",
                120,
                "--calibration",
                calibration,
                "--out",
                result))
        .as(shell.said())
        .isZero();
    assertThat(shell.said()).contains("door: settled 120 s", "First place again, sill: +0.000");
    JsonNode told = json(result).path("places");
    assertThat(told).hasSize(3);
    assertThat(told.get(2).path("place").asText()).isEqualTo("sill");
    assertThat(told.get(2).path("rank").asInt()).isEqualTo(3);
    assertThat(shell.run("survey", places, "--speeds", speeds())).isEqualTo(3);
    assertThat(shell.said()).contains("--settle-s");
    assertThat(shell.run("survey", places, "--settle-s", 60)).isEqualTo(3);
    assertThat(shell.said()).contains("--speeds");
  }

  @Test
  void driftOfTheFirstPlaceIsALimitNotMet() throws IOException {
    Path places =
        Files.writeString(
            folder.resolve("places.csv"),
            "place,speed_m_s,u95_m_s\na,0.2,0.01\nb,0.3,0.01\na,0.25,0.01\n");
    assertThat(shell.run("survey", places)).isEqualTo(4);
    assertThat(shell.said()).contains("more than ± 0.014 m/s allow");
  }

  @Test
  void resultInAnInstrumentsFolderIsEntered() throws IOException {
    Path instrument = folder.resolve("pair");
    Files.createDirectories(instrument);
    Files.writeString(
        instrument.resolve("journal.jsonl"),
        "{\"id\":\"e1\",\"at\":\"2026-11-28T09:01+01:00\",\"who\":\"Jo\","
            + "\"what\":\"instrument\",\"name\":\"Pair\",\"made_up\":true}\n");
    Path places =
        Files.writeString(
            instrument.resolve("places.csv"),
            "place,speed_m_s,u95_m_s\na,0.2,0.01\nb,0.3,0.01\na,0.2,0.01\n");
    Path result = instrument.resolve("survey.json");
    assertThat(shell.run("survey", places, "--out", result, "--who", "Jo"))
        .as(shell.said())
        .isZero();
    assertThat(Files.readString(instrument.resolve("journal.jsonl")))
        .contains(
            "\"kind\":\"survey\",\"file\":\"places.csv\",\"sha256\":",
            "\"kind\":\"survey\",\"file\":\"survey.json\",\"sha256\":");
    Path figures = instrument.resolve("summary.csv");
    Path picture = instrument.resolve("summary.svg");
    assertThat(
            shell.run("summary", speeds(), "--out", figures, "--picture", picture, "--who", "Jo"))
        .as(shell.said())
        .isZero();
    assertThat(Files.readString(instrument.resolve("journal.jsonl")))
        .contains(
            "\"kind\":\"summary\",\"file\":\"summary.csv\",\"sha256\":",
            "\"kind\":\"summary\",\"file\":\"summary.svg\",\"sha256\":");
    assertThat(shell.run("check", instrument)).as(shell.said()).isZero();
    Files.writeString(result, "{}");
    assertThat(shell.run("check", instrument)).isEqualTo(3);
  }
}
