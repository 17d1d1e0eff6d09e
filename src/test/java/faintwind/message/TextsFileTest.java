package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The texts are those that the library reads, whatever form a line has. */
class TextsFileTest {
  private static final List<String> PIECES =
      List.of(
          "a.b", "=", ":", " ", "\t", "\\", "\n", "#", "!", "°", "\\u00b1", "'{0}'", "\r\n", "\f");

  @Test
  void shippedTextsAreThoseOfTheLibrary() throws IOException {
    try (InputStream in =
        TextsFileTest.class.getResourceAsStream("/faintwind/messages.properties")) {
      byte[] file = in.readAllBytes();
      assertThat(saysTwice(file)).isFalse();
      assertThat(TextsFile.read(file)).isEqualTo(byLibrary(file)).hasSizeGreaterThan(4000);
    }
  }

  @Test
  void anyLinesAreReadAsByTheLibrary() throws IOException {
    long seed = 20261130;
    Random random = new Random(seed);
    int compared = 0;
    for (int round = 0; round < 20_000; round++) {
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(24); i >= 0; i--) {
        text.append(PIECES.get(random.nextInt(PIECES.size())));
      }
      byte[] file = text.toString().getBytes(StandardCharsets.UTF_8);
      if (saysTwice(file)) {
        continue; // which of two texts counts is not promised
      }
      compared++;
      assertThat(TextsFile.read(file)).as("seed %d, [%s]", seed, text).isEqualTo(byLibrary(file));
    }
    assertThat(compared).isGreaterThan(10_000);
  }

  @Test
  void theEnglishTextsAnswerForEveryLanguage() {
    ResourceBundle bundle = ProgramTexts.bundle(Locale.JAPANESE);
    assertThat(bundle.getLocale()).isEqualTo(Locale.ROOT);
    assertThat(bundle.containsKey("no.such-key")).isFalse();
  }

  private static boolean saysTwice(byte[] file) throws IOException {
    Set<Object> keys = new HashSet<>();
    boolean[] twice = {false};
    Properties counting =
        new Properties() {
          @Override
          public synchronized Object put(Object key, Object value) {
            twice[0] |= !keys.add(key);
            return super.put(key, value);
          }
        };
    counting.load(new StringReader(new String(file, StandardCharsets.UTF_8)));
    return twice[0];
  }

  private static Map<String, String> byLibrary(byte[] file) throws IOException {
    Properties properties = new Properties();
    properties.load(new StringReader(new String(file, StandardCharsets.UTF_8)));
    Map<String, String> texts = new HashMap<>();
    properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
    return texts;
  }
}
