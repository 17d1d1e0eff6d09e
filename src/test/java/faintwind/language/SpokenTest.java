package faintwind.language;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.language.Spoken;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.ProgramTexts;
import faintwind.message.Translation.Direction;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A person's language file is used as it is, or named with what is wrong with it. */
class SpokenTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private void file(String code, String text) throws IOException {
    Files.createDirectories(folder.resolve("lang"));
    Files.writeString(folder.resolve("lang/" + code + ".json"), text);
  }

  private static String german(String texts, String more) {
    return "{\"format\": \"faintwind-language/1\", \"language\": \"de\", \"texts\": {"
        + texts
        + "}"
        + more
        + "}";
  }

  private List<String> problems() {
    Spoken spoken = Spoken.in("de", folder);
    assertThat(spoken.words().text("window.look")).isEqualTo("Look");
    assertThat(spoken.problems()).allSatisfy(p -> assertThat(spoken.words().line(p)).isNotEmpty());
    return spoken.problems().stream().map(Problem::id).toList();
  }

  @Test
  void aTextThatIsThereIsUsedAndOneThatIsNotIsEnglishAndMarked() throws IOException {
    file("de", german("\"window.look\": \"Aussehen\"", ""));
    Messages words = Spoken.in("de", folder).words();
    assertThat(words.text("window.look")).isEqualTo("Aussehen");
    assertThat(words.text("window.help")).startsWith("[en] ");
    assertThat(words.bundle().getString("window.look")).isEqualTo("Aussehen");
    assertThat(words.locale()).isEqualTo(Locale.GERMAN);
    assertThat(words.direction()).isEqualTo(Direction.LTR);
  }

  @Test
  void numbersInATextHaveTheDecimalMarkOfItsLanguageAndNotOfTheSystem() throws IOException {
    file("de", german("\"where.line\": \"Zeile {0}\"", ""));
    Messages words = Spoken.in("de", folder).words();
    assertThat(words.text("where.line", Numerals.places(0.25, 2))).isEqualTo("Zeile 0,25");
    Messages english = Messages.of(Locale.forLanguageTag("ar-EG"));
    assertThat(english.text("where.line", 12)).isEqualTo("line 12");
    assertThat(english.text("where.line", Numerals.places(0.25, 2))).isEqualTo("line 0.25");
    assertThat(Messages.of(Locale.GERMANY).text("where.line", 1.5)).isEqualTo("line 1.5");
  }

  @Test
  void theSystemsLanguageIsSpokenWhereThereIsAFileForIt() throws IOException {
    assertThat(Spoken.bySystem(Locale.GERMANY, folder).words().locale()).isEqualTo(Locale.ENGLISH);
    file("de", german("\"window.look\": \"Aussehen\"", ""));
    assertThat(Spoken.bySystem(Locale.GERMANY, folder).words().locale()).isEqualTo(Locale.GERMAN);
    assertThat(Spoken.of(Optional.of("en"), Locale.GERMANY, folder).words().locale())
        .isEqualTo(Locale.ENGLISH);
    assertThat(Spoken.known(folder)).containsExactly("de", "en", "en-XA");
  }

  @Test
  void aTextOnSafetyNeedsAReviewAgainstTheEnglishOfToday() throws IOException {
    String key = "turntable.caution.right";
    String english = ProgramTexts.english().getOrDefault(key, "");
    String text = "\"%s\": \"Niemand\"".formatted(key);
    String mark = ", \"reviewed\": {\"%s\": {\"on\": \"2026-11-29\", \"english\": \"%s\"}}";
    file("de", german(text, ""));
    assertThat(Spoken.in("de", folder).words().text(key)).isEqualTo("[en] " + english);
    file("de", german(text, mark.formatted(key, "Anybody")));
    assertThat(Spoken.in("de", folder).words().text(key)).isEqualTo("[en] " + english);
    file("de", german(text, mark.formatted(key, english)));
    assertThat(Spoken.in("de", folder).words().text(key)).isEqualTo("Niemand");
  }

  @Test
  void theExampleOfTheFormatPageIsUsedAsItIs() throws IOException {
    String page = Files.readString(Path.of("docs/formats/language.md"));
    file("de", page.substring(page.indexOf("```json\n") + 8, page.lastIndexOf("```")));
    Spoken spoken = Spoken.in("de", folder);
    assertThat(spoken.problems()).isEmpty();
    assertThat(spoken.words().text("turntable.caution.right")).isEqualTo("Niemand");
    assertThat(spoken.words().text("turntable.caution.ask")).isEqualTo("Wer darf im Kreis stehen?");
  }

  @Test
  void aLanguageReadFromTheRightSaysSo() throws IOException {
    file("de", german("", ", \"direction\": \"rtl\""));
    assertThat(Spoken.in("de", folder).words().direction()).isEqualTo(Direction.RTL);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "language.foreign-key; \"window.lok\": \"Aussehen\"",
        "language.value-missing; \"where.line\": \"Zeile\"",
        "language.value-foreign; \"where.line\": \"Zeile {0} {1}\"",
        "language.apostrophe; \"where.line\": \"l'{0}\"",
        "language.pattern; \"where.line\": \"{0} und {0\"",
        "json.schema; \"window.look\": 7",
        "json.syntax; \"window.look\"",
      })
  void aTextThatCannotBeUsedIsRefusedByName(String problem, String text) throws IOException {
    file("de", german(text, ""));
    assertThat(problems()).contains(problem, "language.not-used");
    Spoken spoken = Spoken.in("de", folder);
    assertThat(spoken.problems().get(0).where().file().orElse("")).endsWith("de.json");
  }

  @Test
  void filesThatAreNoneAreRefusedByName() throws IOException {
    file("de", german("", "").replace("\"de\"", "\"fr\""));
    assertThat(problems()).contains("language.other-code");
    String mark = ", \"reviewed\": {\"a\": {\"on\": \"2026-02-31\", \"english\": \"b\"}}";
    file("de", german("", mark));
    assertThat(problems()).contains("language.no-day");
    Path file = folder.resolve("lang/de.json");
    byte[] latin = german("\"window.look\": \"Gefäß\"", "").getBytes(StandardCharsets.ISO_8859_1);
    Files.write(file, latin);
    assertThat(problems()).contains("json.syntax");
    Files.write(file, new byte[9 << 20]);
    assertThat(problems()).contains("file.too-large");
    Files.delete(file);
    Files.createDirectory(file);
    assertThat(problems()).contains("file.is-folder");
  }

  @Test
  void aCodeWithoutAFileIsSaidWithThoseThereAre() {
    assertThat(Spoken.in("../x", folder).problems())
        .extracting(Problem::id)
        .containsExactly("language.unknown");
    Problem problem = Spoken.in("de", folder).problems().get(0);
    assertThat(Messages.of(Locale.ENGLISH).line(problem))
        .contains("\"de\"", "en-XA", folder.resolve("lang").toString());
  }

  @Test
  void aFileOfManyFaultsIsToldInFewLines() throws IOException {
    StringBuilder texts = new StringBuilder("\"a\": \"b\"");
    for (int i = 0; i < 5000; i++) {
      texts.append(", \"foreign").append(i).append("\": \"text\"");
    }
    file("de", german(texts.toString(), ""));
    assertThat(problems()).hasSize(22).contains("file.and-more");
  }
}
