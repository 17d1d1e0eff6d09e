package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.job.language.Spoken;
import faintwind.language.PseudoLanguage;
import faintwind.language.PseudoWords;
import faintwind.message.Messages;
import faintwind.message.Typeset;
import faintwind.ui.measure.ShownTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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

  /**
   * Names that people gave, ids and files as they are written, the numbers of a formula by their
   * keys in the calibration, and days, which this language shares with English.
   */
  private static final Pattern NO_WORDS =
      Pattern.compile(
          "\"[^\"]*\"|\\S*[/_]\\S*|\\S+\\.(csv|json|html|pdf|jsonl)|\\b[a-z]+(-[a-z0-9]+)+\\b"
              + "|Made-up builder|\\bIda\\b|Year 10|Otters, Newts, , Herons|Rind \\d[a-z, ]*|Door to the store room"
              + "|Window sill, north|: (fresh|made|live|made up|opening)\\b"
              + "|\\d{1,2} [A-Z][a-z]+ \\d{4}|\\b(Mon|Tue|Wed|Thu|Fri|Sat|Sun) \\d+"
              + "|^(bead time|conduction|forced|heater share|heater time|heating|leads|mismatch"
              + "|mixing|natural|offset|radiation|sensitivity slope|tilt|warmth)$");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final Map<String, TreeSet<String>> english = new TreeMap<>();
  private List<String> parts = List.of();

  @Tag("slow")
  @Test
  void noScreenHasAWordOfEnglish(FxRobot robot) throws IOException {
    parts = namesOfParts();
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
      String words = NO_WORDS.matcher(withoutParts(text)).replaceAll("");
      if (!PseudoWords.english(words).isEmpty()) {
        english.computeIfAbsent(text, t -> new TreeSet<>()).add(screen);
      }
    }
    lay(root, wide, high);
  }

  /** Parts are named by their own files, the longest name first. */
  private String withoutParts(String text) {
    String left = text;
    for (String name : parts) {
      left = left.replace(name, "").replace(Typeset.of(name), "");
    }
    return left;
  }

  private static List<String> namesOfParts() throws IOException {
    TreeSet<String> names =
        new TreeSet<>(
            Comparator.comparing(String::length)
                .reversed()
                .thenComparing(Comparator.naturalOrder()));
    for (String kind :
        List.of(
            "batteries",
            "coats",
            "loggers",
            "metals",
            "meters",
            "resistors",
            "thermocouples",
            "wires")) {
      try (Stream<Path> files = Files.list(Path.of("assets", kind))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
          texts(new ObjectMapper().readTree(file.toFile()), names);
        }
      }
    }
    return List.copyOf(names);
  }

  private static void texts(JsonNode node, Set<String> to) {
    if (node.isTextual() && node.asText().length() > 2) {
      to.add(node.asText());
    }
    if (node.has("name")) {
      to.add(node.path("name").asText().split("[ ,]", 2)[0]); // where there is little room
    }
    node.forEach(inner -> texts(inner, to));
  }

  private static void lay(Parent root, double wide, double high) {
    root.resize(wide, high);
    for (int pass = 0; pass < 3; pass++) {
      root.applyCss();
      root.layout();
    }
  }
}
