package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * One value from outside: inputs as printed, value, unit, tolerance, source, and its standing. Only
 * what somebody else printed and was seen is <em>published</em>, and is held to its printed
 * rounding; a printed value that rests on other constants than ours is <em>compared</em> within the
 * known difference; what we worked out again from a published formula is <em>cross-checked</em>.
 */
record PublishedRow(NamedCsvRecord csv) {

  /** A test for each row of a file; each names its source. */
  static Stream<DynamicTest> tests(String file, ToDoubleFunction<PublishedRow> computed) {
    return rows(file).stream()
        .map(row -> DynamicTest.dynamicTest(row.title(), () -> row.compare(computed)));
  }

  private static List<PublishedRow> rows(String file) {
    Path path = Path.of("src/test/resources/published", file);
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(path)) {
      return reader.stream().map(PublishedRow::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String standing() {
    String status = csv.getField("status");
    if (status.startsWith("compared")) {
      return "compared";
    }
    if (status.startsWith("seen")) {
      return "published";
    }
    return status.contains("memory") ? "from memory" : "cross-checked";
  }

  /** One unit of the last digit that was printed. */
  private double rounding() {
    BigDecimal printed = new BigDecimal(csv.getField("value"));
    return printed.ulp().doubleValue();
  }

  private boolean isHeldToItsRounding() {
    double value = Double.parseDouble(csv.getField("value"));
    return !standing().equals("published") || tolerance(value) <= 1.001 * rounding();
  }

  /** Titles of the published rows whose tolerance is wider than what was printed. */
  static List<String> widened(String file) {
    return rows(file).stream()
        .filter(row -> !row.isHeldToItsRounding())
        .map(PublishedRow::title)
        .toList();
  }

  private void compare(ToDoubleFunction<PublishedRow> computed) {
    double value = Double.parseDouble(csv.getField("value"));
    assertThat(computed.applyAsDouble(this)).isCloseTo(value, within(tolerance(value)));
  }

  private double tolerance(double value) {
    String text = csv.getField("tolerance");
    return text.endsWith(" rel")
        ? Math.abs(value) * Double.parseDouble(text.replace(" rel", ""))
        : Double.parseDouble(text);
  }

  private String title() {
    return "%s: %s %s = %s %s (%s; %s)"
        .formatted(
            standing(),
            what(),
            csv.getField("inputs"),
            csv.getField("value"),
            csv.getField("unit"),
            csv.getField("source"),
            csv.getField("status"));
  }

  String what() {
    return csv.getField("what");
  }

  String text(String name) {
    Map<String, String> inputs = new HashMap<>();
    for (String pair : csv.getField("inputs").split(";", -1)) {
      int at = pair.indexOf('=');
      inputs.put(pair.substring(0, at), pair.substring(at + 1));
    }
    if (!inputs.containsKey(name)) {
      throw new IllegalArgumentException(name + " in " + csv);
    }
    return inputs.get(name);
  }

  double number(String name) {
    return Double.parseDouble(text(name));
  }
}
