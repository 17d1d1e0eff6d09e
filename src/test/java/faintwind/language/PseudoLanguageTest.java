package faintwind.language;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.checklist.ChecklistFiles;
import faintwind.files.checklist.EnglishTexts;
import faintwind.files.language.LanguageFolders;
import faintwind.guide.checklist.Checklist;
import faintwind.message.Checked;
import faintwind.message.ProgramTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The shipped example of a language is made from the English texts of today. */
class PseudoLanguageTest {
  private static final Locale LOCALE = Locale.forLanguageTag(PseudoLanguage.CODE);
  private static final String FILE = "lang/" + PseudoLanguage.CODE + ".json";
  private static final Path PROGRAM = Path.of("assets", FILE);
  private static final Path STANDARD = Path.of("checklists/standard");

  /** Written anew by {@code -Dgolden.write=true}. */
  @Test
  void theShippedFilesAreThoseOfTheTextsOfToday() throws IOException {
    same(PROGRAM, PseudoLanguage.program());
    same(STANDARD.resolve(FILE), PseudoLanguage.checklist());
  }

  private static void same(Path file, String made) throws IOException {
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, made);
    }
    assertThat(Files.readString(file).equals(made))
        .as(file + " is as -Dgolden.write=true writes it")
        .isTrue();
  }

  @Test
  void theyCanBeUsed() throws IOException {
    assertThat(new LanguageFolders(Path.of("none")).read(PseudoLanguage.CODE).problems()).isEmpty();
    Checked<Checklist> read = ChecklistFiles.read(List.of(STANDARD), LOCALE);
    assertThat(read.problems()).isEmpty();
  }

  @Test
  void wordsAreLongerAndValuesStay() {
    assertThat(PseudoWords.text("Switch {0} off in {1} min: {2,choice,0#no fuse|1#one fuse}."))
        .isEqualTo("[Šŵííţççĥ {0} ófff in {1} min: {2,choice,0#no fúššé|1#óñéé fúššé}.]");
    assertThat(PseudoWords.text("{0} mm")).isEqualTo("{0} mm");
    assertThat(PseudoWords.text("time_s in log.csv")).isEqualTo("time_s in log.csv");
  }

  @Test
  void manyTextsAreOnSafetyAndTheCautionsAreAmongThem() throws IOException {
    assertThat(EnglishTexts.read().onSafety())
        .contains("steps.first-power.cautions.hot-ball.text", "steps.first-power.how.0")
        .doesNotContain("steps.first-power.title")
        .hasSizeGreaterThan(200);
    assertThat(ProgramTexts.english().keySet().stream().filter(ProgramTexts::onSafety))
        .contains("turntable.caution.text", "design.lithium", "flow.ask-hive.right")
        .doesNotContain("window.look");
  }
}
