package faintwind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskedLanguageTest {
  @ParameterizedTest
  @CsvSource({
    "'', true",
    "--instruments a, true",
    "--instruments=a --language de, true",
    "--open, true",
    "--open --language en-XA, true",
    "--instruments a --help, false",
    "--language de check x, false",
    "check, false",
    "chek, false",
    "--instruments a check, false",
    "--help, false",
  })
  void theWindowIsAskedForWhereNothingElseIsSaid(String line, boolean window) {
    List<String> words = line.isEmpty() ? List.of() : List.of(line.split(" "));
    assertThat(AskedLanguage.asksForTheWindow(words)).isEqualTo(window);
  }
}
