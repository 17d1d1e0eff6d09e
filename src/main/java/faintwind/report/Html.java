package faintwind.report;

import java.util.List;

/** Builds well-formed XHTML piece by piece; every text is escaped. Mutable; for one thread. */
final class Html {
  private final StringBuilder out = new StringBuilder();

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Markup that is known to be well formed. */
  Html raw(String markup) {
    out.append(markup).append('\n');
    return this;
  }

  /** An element with text in it. */
  Html element(String tag, String text) {
    return raw("<" + tag + ">" + escaped(text) + "</" + tag + ">");
  }

  /** An element of a class with text in it. */
  Html element(String tag, String cssClass, String text) {
    return raw("<" + tag + " class=\"" + cssClass + "\">" + escaped(text) + "</" + tag + ">");
  }

  /** A list of texts; nothing where there is none. */
  Html list(List<String> texts) {
    if (!texts.isEmpty()) {
      raw("<ul>");
      texts.forEach(text -> element("li", text));
      raw("</ul>");
    }
    return this;
  }

  Html openTable(String cssClass, List<String> heads) {
    raw("<table class=\"" + cssClass + "\"><thead><tr>");
    heads.forEach(head -> element("th", head));
    return raw("</tr></thead><tbody>");
  }

  /** A row of plain texts. */
  Html row(List<String> cells) {
    return markupRow(cells.stream().map(Html::escaped).toList());
  }

  /** A row whose cells hold markup already. */
  Html markupRow(List<String> cells) {
    out.append("<tr>");
    cells.forEach(cell -> out.append("<td>").append(cell).append("</td>"));
    return raw("</tr>");
  }

  Html closeTable() {
    return raw("</tbody></table>");
  }

  /** Markup of one text, struck through. */
  static String struck(String text) {
    return "<s>" + escaped(text) + "</s>";
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
