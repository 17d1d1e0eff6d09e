package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The three looks differ in colours alone: what is laid out well in one is so in all. */
class LooksTest {
  private static final Path SHEETS = Path.of("src/main/resources/faintwind/ui");
  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)}");
  private static final Pattern PROPERTY = Pattern.compile("(-[a-z0-9-]+)\\s*:");

  @Test
  void aLookStatesColoursAndNothingElse() throws IOException {
    Map<String, List<String>> stated = new TreeMap<>();
    for (String sheet : List.of("tokens.css", "faintwind.css", "data.css")) {
      Matcher rule = RULE.matcher(withoutRemarks(Files.readString(SHEETS.resolve(sheet))));
      while (rule.find()) {
        String selector = rule.group(1).strip();
        if (selector.startsWith(".fw-")) {
          stated
              .computeIfAbsent(selector, s -> new ArrayList<>())
              .addAll(properties(rule.group(2)));
        }
      }
    }
    assertThat(stated).containsKeys(".fw-light", ".fw-dark", ".fw-contrast");
    assertThat(stated.get(".fw-dark")).isEqualTo(stated.get(".fw-light"));
    assertThat(stated.get(".fw-contrast")).isEqualTo(stated.get(".fw-light"));
    assertThat(stated.get(".fw-light")).allMatch(name -> name.startsWith("-fw-"));
    stated.forEach(
        (selector, names) -> {
          boolean shared = selector.equals(".fw-light, .fw-dark, .fw-contrast");
          assertThat(shared || selector.matches("\\.fw-(light|dark|contrast)"))
              .as("a rule of one look: " + selector)
              .isTrue();
        });
  }

  private static String withoutRemarks(String sheet) {
    return sheet.replaceAll("(?s)/\\*.*?\\*/", "");
  }

  private static List<String> properties(String body) {
    List<String> names = new ArrayList<>();
    Matcher property = PROPERTY.matcher(body);
    while (property.find()) {
      names.add(property.group(1));
    }
    return names;
  }
}
