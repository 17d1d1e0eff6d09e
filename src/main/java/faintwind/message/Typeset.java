package faintwind.message;

import java.util.Comparator;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A text as it is set on screens and pages: no line ends between a number and its unit, and a minus
 * is one. What a machine reads, and what stands in a terminal, is left as it is.
 */
public final class Typeset {
  private static final String NO_BREAK = "\u00a0";
  private static final String MINUS = "\u2212";

  /** Words of their own, or what one may call a thing: 5 in a row, lead 2 C. */
  private static final Set<String> WORDS =
      Set.of("", "in", "inch", "inches", "\"", "d", "day", "days", "sec", "R", "C", "l");

  private static final Pattern AFTER_SIGN = Pattern.compile("(?<=±) (?=\\d)");

  /** Before a number and after no letter, digit or mark of a name, date, option or path. */
  private static final Pattern HYPHEN =
      Pattern.compile("(?<![\\p{L}\\p{N}\\p{Pd}._/\\\\^])-(?=\\d)");

  private Typeset() {}

  /** Needs the table of units, which only a text with a number asks for. */
  private static final class BeforeUnit {
    static final Pattern PATTERN =
        Pattern.compile("(?<=\\d) (?=(?:ppm|" + units() + ")(?![\\p{L}\\p{N}]))");
  }

  /** The same words, set. */
  public static String of(String text) {
    if (text.chars().noneMatch(Typeset::isDigit)) {
      return text;
    }
    String joined = BeforeUnit.PATTERN.matcher(text).replaceAll(NO_BREAK);
    joined = AFTER_SIGN.matcher(joined).replaceAll(NO_BREAK);
    return HYPHEN.matcher(joined).replaceAll(MINUS);
  }

  private static boolean isDigit(int letter) {
    return letter >= '0' && letter <= '9';
  }

  private static String units() {
    return UnitSymbols.symbols().stream()
        .filter(symbol -> !WORDS.contains(symbol))
        .sorted(Comparator.comparingInt(String::length).reversed())
        .map(Pattern::quote)
        .collect(Collectors.joining("|"));
  }
}
