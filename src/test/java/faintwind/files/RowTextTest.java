package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells of people's text in files that are opened as sheets. */
class RowTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "ball, copper | \"ball, copper\"",
        "=1+1 | '=1+1",
        "+cmd | '+cmd",
        "-2 | -2",
        "-2.5e-3 | -2.5e-3",
        "-2+3 | '-2+3",
        "@sum(a1) | '@sum(a1)",
        "=\"a\",b | \"'=\"\"a\"\",b\"",
        "1/2 | 1/2"
      })
  void aCellThatASheetWouldWorkOutStaysText(String cell, String written) {
    assertThat(RowText.harmless(cell)).isEqualTo(written);
  }
}
