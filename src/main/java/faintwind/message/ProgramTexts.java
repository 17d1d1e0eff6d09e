package faintwind.message;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The English texts of the program that a language file may bring in another language. */
public final class ProgramTexts {
  private static final String BUNDLE = "faintwind.messages";

  /** Lists of names that pick what a screen explains: not words. */
  private static final Pattern LIST = Pattern.compile("help\\..+\\.keys");

  /** A translation of these must have been reviewed: who follows a wrong one can be hurt. */
  private static final Pattern SAFETY =
      Pattern.compile(
          ".*(caution|safety|lithium|lead-acid|hot-to-touch|hot-in-reach|zincate|mains-with).*"
              + "|air\\.ask.*|flow\\.ask.*|runsheet\\.before\\..*|contradiction\\.heated-over.*"
              + "|window\\.step\\.locked\\.home-plating|print\\.behind\\.home-plating|live-guide\\.(spin-now|stand-back|stop|keep-off)\\.why"
              + "|parts\\.(supply|epoxy|plating|tool|home-plating)\\.look-for"
              + "|gate\\.closed\\.home-plating.*|design\\.varnish-burns.*"
              + "|quantity\\.heated_ball_C.*|suggest\\.none|glossary\\.burn-threshold\\.means");

  private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')(?:'')*'(?!')");

  private ProgramTexts() {}

  /** Every English text by its key. */
  public static Map<String, String> english() {
    return of(bundle(Locale.ROOT));
  }

  static ResourceBundle bundle(Locale asked) {
    return ResourceBundle.getBundle(
        BUNDLE,
        asked,
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  static Map<String, String> of(ResourceBundle bundle) {
    Map<String, String> texts = new TreeMap<>();
    for (String key : bundle.keySet()) {
      String text = bundle.getString(key);
      if (!text.isBlank() && !LIST.matcher(key).matches()) {
        texts.put(key, text);
      }
    }
    return texts;
  }

  /** Whether a wrong translation of a text could hurt somebody. */
  public static boolean onSafety(String key) {
    return SAFETY.matcher(key).matches();
  }

  /** All that is wrong with a translation of them; empty where it can be used. */
  public static List<Problem> problems(Translation translation, String file) {
    List<Problem> problems = new ArrayList<>(translation.problems(english(), file));
    for (String key : new TreeSet<>(translation.texts().keySet())) {
      Where where = Where.file(file).atColumn(key);
      String text = translation.texts().getOrDefault(key, "");
      if (LONE_APOSTROPHE.matcher(text).find()) {
        problems.add(Problem.error("language.apostrophe", where, text));
      } else if (!isPattern(text)) {
        problems.add(Problem.error("language.pattern", where, text));
      }
    }
    return problems;
  }

  private static boolean isPattern(String text) {
    try {
      return new MessageFormat(text, Locale.ROOT).getFormats() != null;
    } catch (IllegalArgumentException broken) {
      return false;
    }
  }
}
