package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers follow the language of the text they stand in. */
class NumbersInLanguagesTest {
  private static final String BRIEF = "bench-list.brief";

  private static Messages in(String code, Map<String, String> texts) {
    Locale language = Locale.forLanguageTag(code);
    return Messages.in(new Translation(language, Translation.Direction.LTR, texts, Map.of()));
  }

  @Test
  void aTranslatedTextHasTheMarkOfItsLanguage() {
    Messages german = in("de", Map.of(BRIEF, "{0} bis {1} m/s, {2}: ± {3} %"));
    assertThat(german.text(BRIEF, "0.097", "2.9", "gut", "2.3"))
        .isEqualTo("0,097 bis 2,9 m/s, gut: ± 2,3 %");
  }

  @Test
  void aTextThatStayedEnglishHasEnglishNumbers() {
    Messages german = in("de", Map.of());
    String amount = AmountText.quantity(12.7, "mm", 4, german.locale());
    assertThat(amount).isEqualTo("12,70\u00a0mm");
    assertThat(german.text(BRIEF, "0.097", amount, "good", "2.3"))
        .isEqualTo("[en] 0.097 to 12.70\u00a0mm m/s, good: ± 2.3 %");
  }

  @Test
  void whatStayedEnglishWithinIsMarkedOnce() {
    Messages german = in("de", Map.of());
    String good = german.text("bench-list.grade.good");
    assertThat(good).startsWith(Translation.ENGLISH);
    assertThat(german.text(BRIEF, "1", "2", good, "3")).containsOnlyOnce("[en]").contains("good");
  }

  @Test
  void theSentencesOfAProblemAreMarkedOnce() {
    Problem unknown = Problem.error("language.unknown", Where.NOWHERE, "de", "en-XA", "lang");
    assertThat(in("de", Map.of()).sentence(unknown))
        .containsOnlyOnce("[en]")
        .contains("Known besides");
  }

  @ParameterizedTest
  @CsvSource({"ar", "fa", "hi", "bn", "mr", "my"})
  void digitsAreOfOneKind(String code) {
    Messages words = in(code, Map.of("bench-list.waivers", "{0} × {0,choice,1#x|1<{0} y}"));
    String all =
        words.text("bench-list.waivers", 1234)
            + AmountText.quantity(12.7, "mm", 4, words.locale())
            + words.numbers("0.053 ± 0.1 mm");
    assertThat(all).containsPattern("1\\D?234").contains("12").contains("053");
    assertThat(all.replaceAll("[0-9]", "")).doesNotContainPattern("\\p{Nd}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.053|0,053",
        "0.05 ± 0.001 K/s|0,05 ± 0,001 K/s",
        "± 2.3 %|± 2,3 %",
        "0.1 … 0.2 mm|0,1 … 0,2 mm",
        "1.5.2|1.5.2",
        "version 0.5|version 0.5",
        "runs.csv|runs.csv",
      })
  void onlyWhatIsNothingButAmountsIsChanged(String plain, String german) {
    Messages words = in("de", Map.of());
    assertThat(words.numbers(plain)).isEqualTo(german);
  }

  @Test
  void aTextWithoutWordsHasTheMarkOfTheLanguage() {
    Translation german = Translation.none(Locale.GERMAN);
    assertThat(german.over("steps.a.expected", "{ball_mm} ± 0.1", false))
        .isEqualTo("{ball_mm} ± 0,1");
    assertThat(german.over("steps.a.expected", "about 0.1", false)).isEqualTo("[en] about 0.1");
  }
}
