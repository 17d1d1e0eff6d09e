package faintwind.report.export;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.complete.CompleteFormula;
import faintwind.calibration.response.Relation;
import faintwind.files.calibration.CalibrationFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The worked example of docs/formats/calibration.md, number by number. */
class WorkedExampleTest {
  private static final Path PAGE = Path.of("docs/formats/calibration.md");
  private static final String FROM = "<!-- worked example -->\n";
  private static final String TO = "<!-- end of the example -->\n";
  private static final Path DEMO = Path.of("demo-projects/cellar/calibrations/2026-09-13.json");

  @Test
  void everyNumberOfTheExampleIsWhatTheFormulasGive() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf(FROM) + FROM.length();
    int to = page.indexOf(TO);
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(PAGE, page.substring(0, from) + example() + page.substring(to));
    }
    assertThat(page.substring(from, to)).isEqualTo(example());
  }

  private static String example() throws IOException {
    Calibration calibration =
        CalibrationFile.read(DEMO, "demo").fold((read, notes) -> read, problems -> broken());
    CompleteFormula complete = CompleteFormula.of(calibration);
    ExportedFormula exported = new ExportedFormula(calibration, complete, "", "", LocalDate.EPOCH);
    Map<String, Double> known = new LinkedHashMap<>(exported.numbers());
    known.put("signal", 760.0);
    known.put("rate", 0.4);
    known.put("air_C", 15.0);
    known.put("pressure_hPa", 990.0);
    known.put("rh_pct", 80.0);
    known.put("supply_V", 5.01);
    StringBuilder table = new StringBuilder("| name | value | unit |\n| --- | --- | --- |\n");
    for (Relation relation : complete.relations().speed()) {
      ExpressionReader.read(relation.formula());
      relation.start().ifPresent(s -> known.put(relation.name(), value(s, known)));
      for (int i = 0; i < relation.repeat().orElse(1); i++) {
        known.put(relation.name(), value(relation.formula(), known));
      }
      table.append(
          String.format(
              Locale.ROOT,
              "| `%s` | %.8g | %s |%n",
              relation.name(),
              known.getOrDefault(relation.name(), Double.NaN),
              relation.unit()));
    }
    return table.toString();
  }

  private static double value(String formula, Map<String, Double> known) {
    return ExpressionReader.read(formula).value(known, x -> x);
  }

  private static Calibration broken() {
    throw new AssertionError("the demonstration's calibration cannot be read");
  }
}
