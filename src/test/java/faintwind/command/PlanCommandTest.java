package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.Main;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {
  private static final String HALF_INCH = "src/test/resources/design/half-inch-copper.json";

  @TempDir Path tmp;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int plan(String... arguments) {
    Terminal terminal =
        Terminal.of(new ByteArrayInputStream(new byte[0]), out, err, Messages.of(Locale.ENGLISH));
    return Main.run(
        terminal, Stream.concat(Stream.of("plan"), Stream.of(arguments)).toArray(String[]::new));
  }

  @Test
  void jsonGivesWholeBeatsAndTheSpeedThatTheyGive() throws IOException {
    assertThat(plan(HALF_INCH, "--radius-mm", "300,600,900", "--json")).isZero();
    JsonNode planned = new ObjectMapper().readTree(out.toByteArray());
    JsonNode staircase = planned.get("plans").get(0);
    assertThat(staircase.get("form").asText()).isEqualTo("staircase");
    assertThat(staircase.get("mean_u_pct").asDouble()).isBetween(0.5, 2.0);
    int spins = 0;
    for (JsonNode step : staircase.get("steps")) {
      if (step.get("step").asText().equals("spin")) {
        double turns_1_s =
            step.get("beats_a_minute").asInt() / 60.0 / step.get("beats_a_turn").asInt();
        double speed = 2 * Math.PI * step.get("radius_mm").asDouble() / 1000 * turns_1_s;
        assertThat(step.get("speed_m_s").asDouble()).isCloseTo(speed, within(1e-5));
        spins++;
      }
    }
    assertThat(spins).isEqualTo(7);
  }

  @Test
  void bothFormsStandSideBySideWithTheirHoursAndErrors() {
    assertThat(plan(HALF_INCH, "--radius-mm", "600")).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("Staircase: 7 speeds, ", "Separate runs: 7 speeds, ", "good to about a fifth");
  }

  @Test
  void planAndSheetAreWrittenAndThePlanChecksWell() throws IOException {
    Path file = tmp.resolve("plan.json");
    Path sheet = tmp.resolve("sheet.html");
    String[] arguments = {
      HALF_INCH, "--radius-mm", "600", "--out", file.toString(), "--sheet", sheet.toString()
    };
    assertThat(plan(arguments)).isZero();
    assertThat(Files.readString(sheet)).contains("Turns counted", "nobody moves");
    Terminal terminal =
        Terminal.of(new ByteArrayInputStream(new byte[0]), out, err, Messages.of(Locale.ENGLISH));
    assertThat(Main.run(terminal, "check", file.toString())).isZero();
    assertThat(plan(arguments)).isEqualTo(2); // both are there already
  }

  @Test
  void firstCalibrationTellsTheTimeConstantsToo() {
    String calibration = "demo-projects/cellar/calibrations/2026-09-13.json";
    assertThat(plan(calibration, "--radius-mm", "600")).isZero();
  }

  @Test
  void lessonsBeginWarm() throws IOException {
    assertThat(plan(HALF_INCH, "--radius-mm", "600", "--lessons", "4", "--json")).isZero();
    JsonNode staircase = new ObjectMapper().readTree(out.toByteArray()).get("plans").get(0);
    assertThat(staircase.get("lessons").asInt()).isBetween(2, 4);
    for (JsonNode step : staircase.get("steps")) {
      assertThat(step.get("step").asText()).isNotEqualTo("warm-up");
    }
  }
}
