package faintwind.report.picture;

import faintwind.message.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words in the program's own line drawings, which are English in the file. A text has the key
 * {@code picture.} with its letters and digits; numbers, units and letters alone have none. Its
 * {@code {values}} are {@code {0}}, {@code {1}} in the bundle, in their order, and stay for whoever
 * fills them.
 */
public final class PictureWords {
  private static final Pattern TEXT = Pattern.compile("(<text[^>]*>)([^<]+)(</text>)");
  private static final Pattern VALUE = Pattern.compile("\\{\\w+}");

  private PictureWords() {}

  /** The key of a text. */
  public static String key(String english) {
    String name = english.toLowerCase(Locale.ROOT).replaceAll(":$", " follows");
    String slug = name.replaceAll("[^a-z0-9]+", "-");
    return "picture." + slug.replaceAll("^-|-$", "");
  }

  /** A text as it is in the bundle: an apostrophe twice, its values by their number. */
  static String pattern(String english) {
    String pattern = english.replace("'", "''");
    List<String> values = values(english);
    for (int i = 0; i < values.size(); i++) {
      pattern = pattern.replace(values.get(i), "{" + i + "}");
    }
    return pattern;
  }

  private static List<String> values(String english) {
    List<String> values = new ArrayList<>();
    VALUE.matcher(english).results().map(found -> found.group()).distinct().forEach(values::add);
    return values;
  }

  /** A text in the language of the words; as it is where it has no key. */
  public static String of(Messages words, String english) {
    String key = key(english);
    return words.bundle().containsKey(key) ? words.text(key, values(english).toArray()) : english;
  }

  /** A whole drawing in the language of the words. */
  public static String in(Messages words, String svg) {
    return TEXT.matcher(svg)
        .replaceAll(
            text ->
                Matcher.quoteReplacement(
                    text.group(1) + escaped(of(words, text.group(2))) + text.group(3)));
  }

  private static String escaped(String text) {
    return text.replaceAll("&(?!\\w+;)", "&amp;").replace("<", "&lt;");
  }
}
