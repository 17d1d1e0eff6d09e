package faintwind.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.language.PseudoWords;
import faintwind.message.ProgramTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The drawings and the bundle have the same words. */
class PictureWordsTest {
  private static final Pattern TEXT = Pattern.compile("<text[^>]*>([^<]+)</text>");

  @Test
  void everyWordOfADrawingHasItsKeyAndNoOther() throws IOException {
    Map<String, String> drawn = new TreeMap<>();
    try (Stream<Path> files = Files.list(Path.of("assets/pictures"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".svg")).toList()) {
        TEXT.matcher(Files.readString(file))
            .results()
            .map(found -> found.group(1))
            .filter(text -> !PseudoWords.english(text.replaceAll("\\{\\w+}", "")).isEmpty())
            .forEach(text -> drawn.put(PictureWords.key(text), PictureWords.pattern(text)));
      }
    }
    Map<String, String> known = new TreeMap<>(ProgramTexts.english());
    known.keySet().removeIf(key -> !key.startsWith("picture."));
    assertThat(drawn).hasSizeGreaterThan(50);
    assertThat(known).isEqualTo(drawn);
  }

  @Test
  void theKeyIsMadeOfLettersAndDigits() {
    assertThat(List.of(PictureWords.key("rod, 2 mm"), PictureWords.key("round,")))
        .containsExactly("picture.rod-2-mm", "picture.round");
  }
}
