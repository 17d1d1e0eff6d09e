package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.language.Spoken;
import faintwind.language.PseudoLanguage;
import faintwind.language.PseudoWords;
import faintwind.message.Messages;
import faintwind.ui.measure.ShownTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javafx.scene.Parent;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Every screen speaks the language that was chosen: no word of English is left on any. */
@ExtendWith(ApplicationExtension.class)
class OtherLanguageTest {
  private static final int WIDE = 3840;
  private static final int HIGH = 2160;

  /** Names that people gave, ids and files as they are written, and months. */
  private static final Pattern NO_WORDS =
      Pattern.compile(
          "\"[^\"]*\"|\\S*[/_]\\S*|\\S+\\.(csv|json|html|pdf|jsonl)|\\b[a-z]+(-[a-z0-9]+)+\\b"
              + "|Made-up builder|Rind \\d[a-z, ]*|\\d{1,2} [A-Z][a-z]+ \\d{4}");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final Map<String, TreeSet<String>> english = new TreeMap<>();

  @Tag("long")
  @Test
  void noScreenHasAWordOfEnglish(FxRobot robot) throws IOException {
    for (String part : List.of("fresh", "made", "live")) {
      Path place = Files.createDirectories(folder.resolve(part));
      PseudoLanguage.reviewed(place);
      Spoken spoken = Spoken.in(PseudoLanguage.CODE, place);
      assertThat(spoken.problems()).isEmpty();
      Messages words = spoken.words();
      Journey journey = Journey.of(robot, place).in(words);
      EveryScreen screens =
          new EveryScreen(robot, journey, place, name -> robot.interact(() -> read(journey, name)));
      switch (part) {
        case "fresh" -> screens.fresh();
        case "made" -> {
          screens.prepare();
          screens.all();
        }
        default -> {
          screens.unasked();
          screens.live();
        }
      }
    }
    StringBuilder all = new StringBuilder();
    english.forEach((text, screens) -> all.append(screens).append(' ').append(text).append('\n'));
    Files.writeString(Path.of("target/english.txt"), all);
    assertThat(english).as("all in target/english.txt").isEmpty();
  }

  private void read(Journey journey, String screen) {
    Parent root = journey.stage().getScene().getRoot();
    double wide = root.getLayoutBounds().getWidth();
    double high = root.getLayoutBounds().getHeight();
    lay(root, WIDE, HIGH);
    for (String text : ShownTexts.under(root)) {
      if (!PseudoWords.english(NO_WORDS.matcher(text).replaceAll("")).isEmpty()) {
        english.computeIfAbsent(text, t -> new TreeSet<>()).add(screen);
      }
    }
    lay(root, wide, high);
  }

  private static void lay(Parent root, double wide, double high) {
    root.resize(wide, high);
    for (int pass = 0; pass < 3; pass++) {
      root.applyCss();
      root.layout();
    }
  }
}
