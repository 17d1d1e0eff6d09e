package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of the program against the code that uses them. */
class MessageKeysTest {
  private static final Path SOURCES = Path.of("src/main");
  private static final Path WORDS = Path.of("src/main/resources/faintwind/messages.properties");
  private static final Pattern USE =
      Pattern.compile(
          "(?<!Field\\.)\\b(?:error|warning|text|say|tell|descriptionKey"
              + " =)\\s*\\(?\\s*\"([a-z][\\w-]*(?:\\.[\\w-]+)+)\"");
  private static final Pattern FIELD =
      Pattern.compile("Field\\.(?:text|number|whole|word)\\(\\s*\"([a-z][\\w.-]*)\"");
  private static final Pattern LITERAL = Pattern.compile("\"%?([A-Za-z][\\w.-]*)\"");
  private static final Pattern BEGINNING = Pattern.compile("\"([a-z][\\w.-]*[.-])\"");
  private static final Pattern APOSTROPHE = Pattern.compile("(?<!')'(?!')");

  /** Looked up by the library of the command line under names of its own. */
  private static final Pattern COMMAND_LINE =
      Pattern.compile(
          "help|version|usage\\.\\w+Heading|faintwind(\\.[a-z-]+){0,2}\\.(usage\\.description|out)");

  private static final ResourceBundle BUNDLE = Messages.of(Locale.ENGLISH).bundle();

  @Test
  void everyKeyThatTheCodeNamesHasWords() throws IOException {
    Set<String> missing = new TreeSet<>();
    for (Path file : sources()) {
      Matcher use = USE.matcher(Files.readString(file));
      while (use.find()) {
        if (!BUNDLE.containsKey(use.group(1))) {
          missing.add(file.getFileName() + ": " + use.group(1));
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void everyFieldHasAName() throws IOException {
    Set<String> nameless = new TreeSet<>();
    int fields = 0;
    for (Path file : sources()) {
      Matcher field = FIELD.matcher(Files.readString(file));
      while (field.find()) {
        fields++;
        if (!BUNDLE.containsKey("field." + field.group(1))) {
          nameless.add(file.getFileName() + ": " + field.group(1));
        }
      }
    }
    assertThat(nameless).isEmpty();
    assertThat(fields).isGreaterThan(30);
  }

  @Test
  void everyKeyIsNamedSomewhere() throws IOException {
    Set<String> literals = new TreeSet<>();
    Set<String> beginnings = new TreeSet<>();
    for (Path file : sources()) {
      String text = Files.readString(file);
      LITERAL.matcher(text).results().forEach(found -> literals.add(found.group(1)));
      BEGINNING.matcher(text).results().forEach(found -> beginnings.add(found.group(1)));
    }
    List<String> obsolete =
        BUNDLE.keySet().stream()
            .filter(key -> !COMMAND_LINE.matcher(key).matches())
            .filter(key -> !literals.contains(key))
            .filter(key -> !literals.contains(key.replaceFirst("\\.(expected|todo)$", "")))
            .filter(key -> beginnings.stream().noneMatch(key::startsWith))
            .sorted()
            .toList();
    assertThat(obsolete).isEmpty();
  }

  @Test
  void placeholdersCanBeRead() {
    List<String> unreadable = new ArrayList<>();
    for (String key : BUNDLE.keySet()) {
      try {
        assertThat(new MessageFormat(BUNDLE.getString(key), Locale.ENGLISH)).isNotNull();
      } catch (IllegalArgumentException e) {
        unreadable.add(key + ": " + e.getMessage());
      }
    }
    assertThat(unreadable).isEmpty();
  }

  @Test
  void apostrophesAreWrittenTwice() {
    List<String> single =
        BUNDLE.keySet().stream()
            .filter(key -> APOSTROPHE.matcher(BUNDLE.getString(key)).find())
            .sorted()
            .toList();
    assertThat(single).isEmpty();
  }

  @Test
  void commandLineWordsHaveNoApostropheSinceTheyAreShownAsTheyStand() {
    List<String> doubled =
        BUNDLE.keySet().stream()
            .filter(key -> key.startsWith("faintwind."))
            .filter(key -> BUNDLE.getString(key).contains("'"))
            .sorted()
            .toList();
    assertThat(doubled).isEmpty();
  }

  @Test
  void noKeyStandsTwice() throws IOException {
    List<String> keys =
        Files.readAllLines(WORDS).stream()
            .filter(line -> line.matches("[A-Za-z][\\w.-]*\\s*=.*"))
            .map(line -> line.substring(0, line.indexOf('=')).strip())
            .toList();
    assertThat(keys).hasSizeGreaterThan(100).doesNotHaveDuplicates();
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(f -> f.toString().matches(".*\\.(java|fxml)")).toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
