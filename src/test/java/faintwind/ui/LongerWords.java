package faintwind.ui;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Pattern;

/**
 * A language that nobody speaks: English with each word two fifths longer, as words of other
 * languages are. Numbers, units of one letter and what stands in braces stay as they are.
 */
final class LongerWords {
  /** From the range that is set aside for private use. */
  static final Locale LOCALE = Locale.forLanguageTag("qps");

  private static final double MORE = 0.4;

  /** Not words but which of them a screen shows. */
  private static final Pattern LISTS = Pattern.compile("help\\..+\\.keys");

  private static final String NAME = "faintwind/messages";

  private LongerWords() {}

  /** Writes its bundle beside the classes of the tests, where the program looks for languages. */
  static void write() throws IOException {
    Properties english = new Properties();
    try (Reader in =
        Files.newBufferedReader(Path.of("src/main/resources/" + NAME + ".properties"))) {
      english.load(in);
    }
    Properties longer = new Properties();
    english.forEach(
        (key, text) -> {
          boolean ofNames = LISTS.matcher((String) key).matches();
          longer.setProperty((String) key, ofNames ? (String) text : of((String) text));
        });
    Path file = Path.of("target/test-classes/" + NAME + "_" + LOCALE + ".properties");
    Files.createDirectories(file.getParent());
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      longer.store(out, null);
    }
  }

  static String of(String text) {
    StringBuilder out = new StringBuilder();
    int depth = 0;
    double owed = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      out.append(c);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      boolean letter = depth == 0 && Character.isLetter(c);
      boolean inWord = letter && i + 1 < text.length() && Character.isLetter(text.charAt(i + 1));
      owed = letter ? owed + MORE : 0;
      if (inWord && owed >= 1) {
        out.append(Character.toLowerCase(c));
        owed -= 1;
      }
    }
    return out.toString();
  }
}
