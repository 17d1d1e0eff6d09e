package faintwind.report.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lets a time of a page break in a narrow column only between its day and its minute. */
final class UnbrokenTimes {
  private static final Pattern PIECE =
      Pattern.compile("<(style|title|svg)\\b.*?</\\1>|<[^>]*>|[^<]+", Pattern.DOTALL);
  private static final Pattern TIME =
      Pattern.compile("(\\d{1,2} \\p{L}+ \\d{4},) (\\d\\d:\\d\\d UTC[+-]\\d\\d(?::?\\d\\d)?)");
  private static final String UNBROKEN =
      "<span class=\"time\">$1</span> <span class=\"time\">$2</span>";

  private UnbrokenTimes() {}

  /** The same page with every time of its text in a span of its own. */
  static String in(String xhtml) {
    StringBuilder page = new StringBuilder(xhtml.length() + (1 << 12));
    Matcher pieces = PIECE.matcher(xhtml);
    while (pieces.find()) {
      String piece = pieces.group();
      page.append(piece.charAt(0) == '<' ? piece : TIME.matcher(piece).replaceAll(UNBROKEN));
    }
    return page.toString();
  }
}
