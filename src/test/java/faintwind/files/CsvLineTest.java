package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvLineTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "-0",
        "1.",
        ".5",
        "-.25",
        "+7",
        "123456789012345",
        "0.000000000000001",
        "12345.678901234",
        "99999999999999999999",
        "1e3",
        "-2.5E-3",
        " 4.5 ",
        "1e400"
      })
  void numberThatIsFoundIsTheNearestToTheText(String cell) throws IOException {
    CsvLine line = line("x," + cell);
    double wanted = Double.parseDouble(cell.strip());
    assertThat(line.find(1)).isEqualTo(Double.isFinite(wanted));
    if (Double.isFinite(wanted)) {
      assertThat(line.found()).isEqualTo(wanted);
      assertThat(line.number(1)).isEqualTo(OptionalDouble.of(wanted));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "-", "+", ".", "1.2.3", "1-2", "NaN", "0x10", "1f", "--1", "1 2"})
  void nothingIsFoundWhereThereIsNoNumber(String cell) throws IOException {
    CsvLine line = line("3," + cell);
    assertThat(line.find(0)).isTrue();
    assertThat(line.found()).isEqualTo(3);
    assertThat(line.find(1)).isFalse();
    assertThat(line.number(1)).isEmpty();
    assertThat(line.find(2)).isFalse();
  }

  @Test
  void numberWithACommaIsFoundBetweenSemicolons() throws IOException {
    TextLines lines = lines("1,5;2");
    CsvLine line = new CsvLine(';');
    line.read(lines);
    assertThat(line.find(0)).isTrue();
    assertThat(line.found()).isEqualTo(1.5);
  }

  private static CsvLine line(String text) throws IOException {
    TextLines lines = lines(text);
    CsvLine line = new CsvLine();
    line.read(lines);
    return line;
  }

  private static TextLines lines(String text) throws IOException {
    TextLines lines =
        new TextLines(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    assertThat(lines.next()).isTrue();
    return lines;
  }
}
