package faintwind.report.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps each time of a page on one line: without it a narrow column breaks at every hyphen. */
final class UnbrokenTimes {
  private static final Pattern PIECE =
      Pattern.compile("<(style|title|svg)\\b.*?</\\1>|<[^>]*>|[^<]+", Pattern.DOTALL);
  private static final Pattern TIME =
      Pattern.compile("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d UTC[+-]\\d\\d(?::?\\d\\d)?");

  private UnbrokenTimes() {}

  /** The same page with every time of its text in a span of its own. */
  static String in(String xhtml) {
    StringBuilder page = new StringBuilder(xhtml.length() + (1 << 12));
    Matcher pieces = PIECE.matcher(xhtml);
    while (pieces.find()) {
      String piece = pieces.group();
      page.append(
          piece.charAt(0) == '<'
              ? piece
              : TIME.matcher(piece).replaceAll("<span class=\"time\">$0</span>"));
    }
    return page.toString();
  }
}
