package faintwind;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.language.Spoken;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path bench;

  private String heard(String code, Path given) throws IOException {
    Path file = Files.createDirectories(bench.resolve("lang")).resolve("de.json");
    Files.writeString(
        file,
        """
        {"format": "faintwind-language/1", "language": "de", "texts": {"where.line": "Zeile {0}"}}
        """);
    Files.writeString(
        Files.createDirectories(bench.resolve("pair-01")).resolve("journal.jsonl"), "");
    Path nowhere = bench.resolve("none");
    return new AskedLanguage(
            "list", given.toString(), "--instruments", nowhere.toString(), "--language", code)
        .spoken()
        .map(spoken -> spoken.words().text("where.line", "3"))
        .orElseThrow();
  }

  @Test
  void aLanguageBesideTheInstrumentsThatACommandIsGivenIsFound() throws IOException {
    assertThat(heard("de", bench)).isEqualTo("Zeile 3");
    assertThat(heard("de", bench.resolve("pair-01"))).isEqualTo("Zeile 3");
    assertThat(heard("de", bench.resolve("elsewhere"))).isEqualTo("line 3");
  }

  @ParameterizedTest
  @ValueSource(strings = {"DE", "de-AT", "De-at-1901"})
  void lettersDoNotMatterAndARegionFallsBack(String code) throws IOException {
    assertThat(heard(code, bench)).isEqualTo("Zeile 3");
  }

  @ParameterizedTest
  @ValueSource(strings = {"EN", "en-GB"})
  void englishNeedsNoFile(String code) {
    Spoken spoken = new AskedLanguage("--language", code).spoken().orElseThrow();
    assertThat(spoken.problems()).isEmpty();
    assertThat(spoken.words().text("where.line", "3")).isEqualTo("line 3");
  }

  @Test
  void theMadeUpLanguageIsFoundInSmallLetters() {
    Spoken spoken = new AskedLanguage("--language=EN-xa").spoken().orElseThrow();
    assertThat(spoken.words().locale().toLanguageTag()).isEqualTo("en-XA");
  }

  @ParameterizedTest
  @ValueSource(strings = {"xx", "../../etc/passwd", "", "-", "de/../de"})
  void aLanguageThatIsNotThereIsAWarning(String code) {
    Spoken spoken = new AskedLanguage("--language", code).spoken().orElseThrow();
    assertThat(spoken.problems()).isNotEmpty().noneMatch(Problem::isError);
  }
}
