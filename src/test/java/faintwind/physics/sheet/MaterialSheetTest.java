package faintwind.physics.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a resistor's body may reach, by its hottest edge: epoxy softens from 80 °C and fails from
 * 120 °C, varnish and enamel from 130 °C, plastic from 70 °C (common practice, as the class says).
 */
class MaterialSheetTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");

  private static Design design(String wire) throws IOException {
    String text = Files.readString(HALF_INCH).replace("copper-36awg", wire);
    Checked<Design> read = DesignFile.parse(text, Library.shipped());
    return ((Checked.Ok<Design>) read).value();
  }

  @ParameterizedTest(name = "{0} at {1} °C: {2} {3}")
  @CsvSource({
    "copper-36awg, 80, PLAIN, ",
    "copper-36awg, 80.1, IMPROVE, design.epoxy-softens",
    "copper-36awg, 120, IMPROVE, design.epoxy-softens",
    "copper-36awg, 120.1, STOP, design.epoxy-fails",
    "copper-36awg, 130, STOP, design.epoxy-fails",
    "copper-36awg, 130.1, STOP, design.varnish-burns",
    "copper-28awg, 70, PLAIN, ",
    "copper-28awg, 70.1, STOP, design.covering-softens",
    "copper-28awg, 200, STOP, design.covering-softens"
  })
  void theHottestEdgeIsJudgedByWhatTouchesIt(
      String wire, double body_C, DesignVerdict verdict, String id) throws IOException {
    Outcome outcome =
        MaterialSheet.resistor(design(wire), new Interval(body_C - 20, body_C - 10, body_C));
    assertThat(outcome.verdict()).isEqualTo(verdict);
    assertThat(outcome.reason().map(Problem::id).orElse(null)).isEqualTo(id);
    assertThat(outcome.id()).isEqualTo(OutcomeId.RESISTOR_TEMPERATURE);
  }

  @ParameterizedTest(name = "at {0} °C the limit of {1} °C is named")
  @CsvSource({"90, 80", "125, 120", "140, 130"})
  void theLimitIsNamed(double body_C, String limit) throws IOException {
    Problem reason =
        MaterialSheet.resistor(design("copper-36awg"), Interval.exact(body_C))
            .reason()
            .orElseThrow();
    assertThat(reason.found()).isEqualTo(String.valueOf((int) body_C));
    assertThat(reason.details()).first().isEqualTo(limit);
  }
}
