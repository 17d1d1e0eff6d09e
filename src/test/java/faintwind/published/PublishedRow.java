package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * One published value: inputs as printed, value, unit, tolerance, source, and whether the source
 * was seen, is from memory, or the value recomputed.
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
    return "%s %s = %s %s (%s; %s)"
        .formatted(
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
