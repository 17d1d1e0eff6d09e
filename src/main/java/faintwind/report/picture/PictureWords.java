package faintwind.report.picture;

import faintwind.message.Messages;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words in the program's own line drawings, which are English in the file. A text has the key
 * {@code picture.} with its letters and digits; numbers, units and letters alone have none.
 */
public final class PictureWords {
  private static final Pattern TEXT = Pattern.compile("(<text[^>]*>)([^<]+)(</text>)");

  private PictureWords() {}

  /** The key of a text. */
  public static String key(String english) {
    String slug = english.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return "picture." + slug.replaceAll("^-|-$", "");
  }

  /** A text in the language of the words; as it is where it has no key. */
  public static String of(Messages words, String english) {
    String key = key(english);
    return words.bundle().containsKey(key) ? words.text(key) : english;
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
