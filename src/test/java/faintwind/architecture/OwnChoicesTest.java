package faintwind.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A limit of ours without a source names the test that shows it right: that test must be there. */
class OwnChoicesTest {
  private static final Path MAIN = Path.of("src/main/java");
  private static final Path TESTS = Path.of("src/test/java");
  private static final Pattern CLASS = Pattern.compile("\\b[A-Z]\\w*Test\\b");

  /** A word of several, as methods are named; the end may be left out for an ellipsis. */
  private static final Pattern METHOD = Pattern.compile("\\b[a-z][a-z0-9_]*[A-Z]\\w{6,}");

  private static final Pattern LIMIT = Pattern.compile("static final \\w+ \\w+ =");

  private static List<Path> named(Path root, Pattern name) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(f -> name.matcher(f.getFileName().toString()).matches()).toList();
    }
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(m -> m.group()).distinct().toList();
  }

  /** What stands in its comments, where a line may end within a list of tests. */
  private static String comments(String source) {
    return source
        .lines()
        .map(String::strip)
        .filter(line -> line.startsWith("//") || line.startsWith("*") || line.startsWith("/**"))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void everyTestThatIsNamedIsThere() throws IOException {
    Map<String, Path> tests =
        named(TESTS, Pattern.compile("\\w+Test\\.java")).stream()
            .collect(
                Collectors.toMap(
                    f -> f.getFileName().toString().replace(".java", ""),
                    Function.identity(),
                    (one, other) -> one));
    List<String> missing = new ArrayList<>();
    int seen = 0;
    for (Path choices : named(MAIN, Pattern.compile("OwnChoices\\.java"))) {
      String text = comments(Files.readString(choices));
      List<String> classes = found(CLASS, text);
      StringBuilder sources = new StringBuilder();
      for (String name : classes) {
        if (tests.containsKey(name)) {
          sources.append(Files.readString(tests.get(name)));
        } else {
          missing.add(choices + ": " + name);
        }
      }
      for (String method : found(METHOD, text)) {
        seen++;
        if (!Pattern.compile("void " + method + "\\w*\\(").matcher(sources).find()) {
          missing.add(choices + ": " + method);
        }
      }
    }
    assertThat(missing).isEmpty();
    assertThat(seen).isGreaterThan(40);
  }

  @Test
  void noLimitStandsBeforeATestIsNamed() throws IOException {
    for (Path choices : named(MAIN, Pattern.compile("OwnChoices\\.java"))) {
      String text = Files.readString(choices);
      String before =
          text.substring(0, LIMIT.matcher(text).results().findFirst().orElseThrow().start());
      assertThat(found(CLASS, before)).as(choices.toString()).isNotEmpty();
    }
  }
}
