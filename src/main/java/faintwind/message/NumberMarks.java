package faintwind.message;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The decimal mark and the digits of numbers within texts of a language. Digits are 0 to 9
 * everywhere: units, codes and dates beside them are, and two kinds in one text are misread.
 */
record NumberMarks(char decimalMark) {
  private static final Set<String> BETWEEN = Set.of("±", "+", "…", "–", "%");

  /** A unit over another, which no list has: K/s, V/K. */
  private static final Pattern OVER = Pattern.compile("[1\\p{L}µ°]{1,3}/[\\p{L}]{1,3}[²³]?");

  /** A sentence is no amount, however short its words are. */
  private static final int LONGEST = 60;

  static NumberMarks of(Locale language) {
    return new NumberMarks(
        DecimalFormatSymbols.getInstance(withPlainDigits(language)).getDecimalSeparator());
  }

  /** The language with the digits 0 to 9. */
  static Locale withPlainDigits(Locale language) {
    return new Locale.Builder().setLocale(language).setUnicodeLocaleKeyword("nu", "latn").build();
  }

  /** Plain numbers, as {@link Numerals} writes them, with this decimal mark; else the text. */
  String own(String text) {
    return exchanged(text, '.', decimalMark);
  }

  /** Numbers with this decimal mark, as {@link AmountText} writes them, in English. */
  String english(String text) {
    return exchanged(text, decimalMark, '.');
  }

  /** Only where the text is nothing but numbers, their units and what stands between these. */
  private static String exchanged(String text, char from, char to) {
    if (from == to || text.length() > LONGEST || text.indexOf(from) < 0) {
      return text;
    }
    String mark = Pattern.quote(String.valueOf(from));
    Pattern number =
        Pattern.compile("[±+\u2212-]?\\d[\\d\u202f]*(" + mark + "\\d+)?(e[+-]?\\d+)?%?");
    String[] parts = text.split("[ \u00a0]");
    boolean amounts =
        Stream.of(parts).allMatch(part -> number.matcher(part).matches() || stands(part));
    return amounts ? text.replace(from, to) : text;
  }

  private static boolean stands(String part) {
    return BETWEEN.contains(part)
        || OVER.matcher(part).matches()
        || UnitSymbols.find(part).isPresent();
  }
}
