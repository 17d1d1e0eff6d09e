package faintwind.report.page;

import faintwind.message.Typeset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sets the words of a page: a time breaks in a narrow column only between its day and its minute, a
 * number is not parted from its unit.
 */
final class UnbrokenTimes {
  private static final Pattern PIECE =
      Pattern.compile("<(style|title|svg)\\b.*?</\\1>|<[^>]*>|[^<]+", Pattern.DOTALL);
  private static final Pattern TIME =
      Pattern.compile("(\\d{1,2} \\p{L}+ \\d{4},) (\\d\\d:\\d\\d UTC[+-]\\d\\d(?::?\\d\\d)?)");
  private static final String UNBROKEN =
      "<span class=\"time\">$1</span> <span class=\"time\">$2</span>";

  private UnbrokenTimes() {}

  /** The same page with its words set, every time in a span of its own. */
  static String in(String xhtml) {
    StringBuilder page = new StringBuilder(xhtml.length() + (1 << 12));
    Matcher pieces = PIECE.matcher(xhtml);
    while (pieces.find()) {
      String piece = pieces.group();
      page.append(piece.charAt(0) == '<' ? piece : set(piece));
    }
    return page.toString();
  }

  private static String set(String text) {
    return TIME.matcher(Typeset.of(text)).replaceAll(UNBROKEN);
  }
}
