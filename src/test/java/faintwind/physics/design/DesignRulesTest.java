package faintwind.physics.design;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule just before and just beyond its edge, on the half-inch copper design. */
class DesignRulesTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");

  private final Catalogue catalogue;
  private final String base;

  DesignRulesTest() throws IOException {
    catalogue = Library.shipped();
    base =
        Files.readString(HALF_INCH)
            .replace(
                "\"diameter_in\": \"1/2\"", "\"diameter_mm\": 12.7, \"diameter_tolerance_mm\": 0");
  }

  private List<Problem> problems(String from, String to) throws IOException {
    assertThat(base).contains(from);
    Checked<Design> read = DesignFile.parse(base.replace(from, to), catalogue);
    return errors(read);
  }

  private static List<Problem> errors(Checked<Design> read) {
    return read.problems().stream().filter(p -> p.severity() == Severity.ERROR).toList();
  }

  private List<String> ids(String from, String to) throws IOException {
    return problems(from, to).stream().map(Problem::id).toList();
  }

  /**
   * By hand for a hole of 3.3 mm in 12.7 mm: the dome is 6.35 − √(6.35² − 1.65²) = 0.218 mm deep,
   * the point of the drill (118°) 1.65·cot 59° = 0.991 mm long, so a hole breaks through from 12.7
   * − 0.218 − 0.991 = 11.491 mm, and leaves less than 0.5 mm from 10.991 mm.
   */
  @ParameterizedTest(name = "a hole {0} mm deep: {1}")
  @CsvSource({
    "10.9, ",
    "10.98, ",
    "11.0, design.bore-thin-bottom",
    "11.48, design.bore-thin-bottom",
    "11.5, design.bore-breaks-through"
  })
  void aHoleLeavesABottom(double depth_mm, String id) throws IOException {
    List<String> expected = id == null ? List.of() : List.of(id);
    String now = "\"reference_bore_depth_mm\": 9.5";
    assertThat(ids(now, "\"reference_bore_depth_mm\": " + depth_mm)).isEqualTo(expected);
    assertThat(ids(now, now + ", \"heated_bore_depth_mm\": " + depth_mm)).isEqualTo(expected);
  }

  @Test
  void theDepthThatWouldDoIsNamed() throws IOException {
    for (String depth_mm : List.of("11.4", "11.6")) {
      Problem problem =
          problems("\"reference_bore_depth_mm\": 9.5", "\"reference_bore_depth_mm\": " + depth_mm)
              .get(0);
      assertThat(problem.found()).isEqualTo(depth_mm);
      assertThat(problem.details()).last().isEqualTo("11");
    }
  }

  /** Half of 12.7 mm is 6.35 mm. */
  @ParameterizedTest(name = "a hole {0} mm wide: {1}")
  @CsvSource({
    "6.3, ",
    "6.4, design.bore-thin-wall",
    "12.6, design.bore-thin-wall",
    "12.7, design.bore-larger-than-ball"
  })
  void aHoleLeavesAWall(double bore_mm, String id) throws IOException {
    List<String> found =
        problems(
                "\"bore_mm\": 3.3, \"reference_bore_depth_mm\": 9.5",
                "\"bore_mm\": " + bore_mm + ", \"reference_bore_depth_mm\": 8")
            .stream()
            .map(Problem::id)
            .filter(each -> each.endsWith("wall") || each.endsWith("ball"))
            .toList();
    assertThat(found).isEqualTo(id == null ? List.of() : List.of(id));
  }

  /** (12.7 − 6.4)/2 mm are left on each side. */
  @Test
  void theWallThatIsLeftIsNamed() throws IOException {
    Problem problem = problems("\"bore_mm\": 3.3", "\"bore_mm\": 6.4").get(0);
    assertThat(problem.found()).isEqualTo("6.4");
    assertThat(problem.details()).containsExactly("3.15", "6.35");
  }

  /** Whitaker's formula ends at Re 7.6e4, so at 15.08 mm²/s and 12.7 mm at 90.2 m/s. */
  @ParameterizedTest(name = "{0} to {1} m/s: {2}")
  @CsvSource({
    "0.05, 3, ",
    "0.05, 0.051, ",
    "0.05, 0.05, design.speeds-reversed",
    "0.06, 0.05, design.speeds-reversed",
    "0.05, 89.8, ",
    "0.05, 90.5, design.speed-outside"
  })
  void speedsRiseWithinTheFormula(String slowest, String fastest, String id) throws IOException {
    assertThat(
            ids(
                "\"slowest_m_s\": 0.05, \"fastest_m_s\": 3",
                "\"slowest_m_s\": " + slowest + ", \"fastest_m_s\": " + fastest))
        .isEqualTo(id == null ? List.of() : List.of(id));
  }

  @ParameterizedTest(name = "{0} on {1}: {2}")
  @CsvSource({
    "bare-polished-copper, copper, ",
    "bare-polished-aluminium, copper, design.coat-of-another-metal",
    "bare-polished-aluminium, aluminium, ",
    "gold, copper, ",
    "nickel, aluminium, "
  })
  void aSurfaceGoesWithItsMetal(String coat, String metal, String id) throws IOException {
    String text =
        base.replace("bare-polished-copper", coat)
            .replace("\"metal\": \"copper\"", "\"metal\": \"" + metal + "\"");
    assertThat(errors(DesignFile.parse(text, catalogue)))
        .extracting(Problem::id)
        .isEqualTo(id == null ? List.of() : List.of(id));
  }
}
