package faintwind.report.page;

import faintwind.message.Translation;
import java.util.List;

/** Builds well-formed XHTML piece by piece; every text is escaped. Mutable; for one thread. */
public final class Html {
  /** A table of so few rows is not torn apart by the end of a page. */
  private static final int SHORT = 8;

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

  /** Attributes of an element whose text is not in the language of the page but English. */
  private static String spoken(String text) {
    return Translation.isEnglish(text) ? " lang=\"en\" dir=\"ltr\"" : "";
  }

  /** The text of a cell, within an element of its own where it is not in the page's language. */
  public static String cell(String text) {
    return Translation.isEnglish(text) ? within("span", text) : escaped(text);
  }

  /** Markup of one text inside an element, such as {@code <b>}. */
  public static String within(String tag, String text) {
    return "<" + tag + spoken(text) + ">" + escaped(text) + "</" + tag + ">";
  }

  /** Markup of one text inside a span of a class. */
  public static String span(String cssClass, String text) {
    return "<span class=\"" + cssClass + "\"" + spoken(text) + ">" + escaped(text) + "</span>";
  }

  /** Markup that is known to be well formed. */
  public Html raw(String markup) {
    out.append(markup).append('\n');
    return this;
  }

  /** An element with text in it. */
  public Html element(String tag, String text) {
    return raw(within(tag, text));
  }

  /** An element of a class with text in it. */
  public Html element(String tag, String cssClass, String text) {
    String attributes = " class=\"" + cssClass + "\"" + spoken(text);
    return raw("<" + tag + attributes + ">" + escaped(text) + "</" + tag + ">");
  }

  /** An element of a class that holds markup already. */
  public Html markup(String tag, String cssClass, String markup) {
    return raw("<" + tag + " class=\"" + cssClass + "\">" + markup + "</" + tag + ">");
  }

  /** A block of a class round what is written meanwhile. */
  public Html block(String cssClass, Runnable content) {
    raw("<div class=\"" + cssClass + "\">");
    content.run();
    return raw("</div>");
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

  /** A table of facts: each row a name as its head, and markup. */
  public Html facts(String cssClass, List<Fact> facts) {
    raw("<table class=\"" + cssClass + "\"><tbody>");
    for (Fact fact : facts) {
      raw(
          "<tr><th scope=\"row\">"
              + cell(fact.name())
              + "</th><td>"
              + fact.markup()
              + "</td></tr>");
    }
    return raw("</tbody></table>");
  }

  /**
   * One line of a table of facts.
   *
   * @param name what it is
   * @param markup what is said of it
   */
  public record Fact(String name, String markup) {
    /** A fact that is plain text. */
    public static Fact text(String name, String text) {
      return new Fact(name, cell(text));
    }
  }

  /** A table of plain texts. */
  public Html table(String cssClass, List<String> heads, List<List<String>> rows) {
    return markupTable(
        cssClass, heads, rows.stream().map(r -> r.stream().map(Html::cell).toList()).toList());
  }

  /** A table whose cells hold markup already; its heads are texts. */
  public Html markupTable(String cssClass, List<String> heads, List<List<String>> rows) {
    String kept = rows.size() <= SHORT ? cssClass + " short" : cssClass;
    raw("<table class=\"" + kept + "\">");
    if (!heads.isEmpty()) {
      out.append("<thead><tr>");
      heads.forEach(head -> raw("<th scope=\"col\">" + cell(head) + "</th>"));
      raw("</tr></thead>");
    }
    raw("<tbody>");
    for (List<String> row : rows) {
      out.append("<tr>");
      row.forEach(cell -> out.append("<td>").append(cell).append("</td>"));
      raw("</tr>");
    }
    return raw("</tbody></table>");
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
