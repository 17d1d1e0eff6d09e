package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.calibration.Calibration;
import faintwind.calibration.FormulaFit;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A local spreadsheet's export becomes a calibration after one message: the one that it follows.
 */
@Tag("long")
class AwkwardCalibrationTest {
  private static final Path AWKWARD = Path.of("src/test/resources/awkward");

  @TempDir Path tmp;

  private final ByteArrayOutputStream told = new ByteArrayOutputStream();

  private int run(String... arguments) {
    told.reset();
    Terminal terminal =
        Terminal.of(
            new ByteArrayInputStream(new byte[0]),
            new ByteArrayOutputStream(),
            told,
            Messages.of(Locale.ENGLISH));
    return Main.run(terminal, arguments);
  }

  private Calibration calibration(String name) throws IOException {
    return OpenCalibration.read(tmp.resolve(name))
        .fold(
            (value, notes) -> value,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  @Test
  void localExportCalibratesAfterOneMessageToTheFormulaOfThePlainFiles() throws IOException {
    String table = AWKWARD.resolve("workshop/runs.csv").toString();
    String made = tmp.resolve("local.json").toString();
    String profile = tmp.resolve("profile.json").toString();
    assertThat(run("calibrate", table, "--refits", "0", "--out", made)).isEqualTo(3);
    List<String> lines = told.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines).singleElement().asString().contains("draft-profile", "--out profile.json");

    String sample = AWKWARD.resolve("workshop/Heizung aus.csv").toString();
    assertThat(run("draft-profile", sample, "--zone", "Europe/Berlin", "--out", profile)).isZero();
    // its made-up loss adds the root of the speed to that of still air, which no ball does
    assertThat(run("calibrate", table, "--profile", profile, "--refits", "0", "--out", made))
        .isEqualTo(4);

    String plain = tmp.resolve("plain.json").toString();
    String plainTable = AWKWARD.resolve("plain/runs.csv").toString();
    assertThat(run("calibrate", plainTable, "--refits", "0", "--out", plain)).isEqualTo(4);
    FormulaFit local = calibration("local.json").formula();
    FormulaFit expected = calibration("plain.json").formula();
    assertThat(local.parameters()).isEqualTo(expected.parameters());
    assertThat(local.referenceAir()).isEqualTo(expected.referenceAir());

    Path speeds = tmp.resolve("speeds.csv");
    String log = AWKWARD.resolve("workshop/Messung.csv").toString();
    String to = speeds.toString();
    assertThat(
            run(
                "convert",
                made,
                log,
                "--profile",
                profile,
                "--decimal-comma",
                "--air-C",
                "19,5",
                "--out",
                to))
        .isZero();
    List<String> rows = Files.readAllLines(speeds);
    assertThat(rows.get(0)).isEqualTo("# start: 2026-11-27T18:30:00+01:00");
    assertThat(rows.get(1))
        .isEqualTo("time_s;signal_mV;air_C;supply_V;time_iso;speed_m_s;u95_m_s;flag");
    assertThat(rows.get(902)).matches("4500;0,6316;19,6;5;2026-11-27T19:45:00\\+01:00;0,\\d{5};.*");
  }
}
