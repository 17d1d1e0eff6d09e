package faintwind.report;

/** Pieces of a page. What comes from outside is always escaped. */
final class PageMarkup {
  private final StringBuilder text = new StringBuilder();

  /** Text that cannot be taken for markup. */
  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** An element with escaped text. */
  PageMarkup element(String name, String content) {
    return raw("<" + name + ">" + escaped(content) + "</" + name + ">\n");
  }

  /** A row of a table. */
  PageMarkup row(String cell, Iterable<String> contents) {
    text.append("<tr>");
    for (String content : contents) {
      text.append('<').append(cell).append('>').append(escaped(content));
      text.append("</").append(cell).append('>');
    }
    text.append("</tr>\n");
    return this;
  }

  /** Markup of our own, as it stands. */
  PageMarkup raw(String markup) {
    text.append(markup);
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
