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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "0,20.5,calm | 0,20.5,calm",
        "0,-20.5,+3e-1 | 0,-20.5,+3e-1",
        "0,=1+1,b | 0,'=1+1,b",
        "0,-2+3 | 0,'-2+3",
        "0,\"=a,b\",c | 0,\"'=a,b\",c",
        "@x | '@x",
        "0,\"plain, text\" | 0,\"plain, text\""
      })
  void rowOfPeoplesTextIsMadeHarmlessCellByCell(String row, String written) {
    assertThat(RowText.harmlessRow(row)).isEqualTo(written);
  }
}
