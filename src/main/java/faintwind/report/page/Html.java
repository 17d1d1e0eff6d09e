package faintwind.report.page;

import java.util.List;

/** Builds well-formed XHTML piece by piece; every text is escaped. Mutable; for one thread. */
public final class Html {
  private final StringBuilder out = new StringBuilder();

  /** The text as XML may carry it; characters that XML 1.0 forbids become question marks. */
  public static String escaped(String text) {
    StringBuilder legal = new StringBuilder();
    text.codePoints().forEach(c -> legal.appendCodePoint(isLegal(c) ? c : '?'));
    return legal
        .toString()
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Char of XML 1.0, production 2. */
  private static boolean isLegal(int c) {
    boolean white = c == '\t' || c == '\n' || c == '\r';
    boolean basic = (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD);
    return white || basic || c >= 0x10000;
  }

  /** Markup that is known to be well formed. */
  public Html raw(String markup) {
    out.append(markup).append('\n');
    return this;
  }

  /** An element with text in it. */
  public Html element(String tag, String text) {
    return raw("<" + tag + ">" + escaped(text) + "</" + tag + ">");
  }

  /** An element of a class with text in it. */
  public Html element(String tag, String cssClass, String text) {
    return raw("<" + tag + " class=\"" + cssClass + "\">" + escaped(text) + "</" + tag + ">");
  }

  /** A list of texts; nothing where there is none. */
  public Html list(List<String> texts) {
    if (!texts.isEmpty()) {
      raw("<ul>");
      texts.forEach(text -> element("li", text));
      raw("</ul>");
    }
    return this;
  }

  public Html openTable(String cssClass, List<String> heads) {
    raw("<table class=\"" + cssClass + "\"><thead><tr>");
    heads.forEach(head -> element("th", head));
    return raw("</tr></thead><tbody>");
  }

  /** A row of plain texts. */
  public Html row(List<String> cells) {
    return markupRow(cells.stream().map(Html::escaped).toList());
  }

  /** A row whose cells hold markup already. */
  public Html markupRow(List<String> cells) {
    out.append("<tr>");
    cells.forEach(cell -> out.append("<td>").append(cell).append("</td>"));
    return raw("</tr>");
  }

  public Html closeTable() {
    return raw("</tbody></table>");
  }

  /** Markup of one text, struck through. */
  public static String struck(String text) {
    return "<s>" + escaped(text) + "</s>";
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
