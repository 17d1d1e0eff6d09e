package faintwind.report.page;

import faintwind.message.Messages;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * A document that stands alone: no file beside it is needed to read or print it. XHTML, so that it
 * can also become a PDF; ink on white, Lato, its title and number on each printed page.
 *
 * @param words in which it is written
 * @param title at its head and on each printed page
 * @param label beside the title; empty where the data are real
 * @param ownStyle rules that this document adds
 */
public record Page(LogWords words, String title, String label, String ownStyle) {
  private static final String CUT = "\u0001";

  @SuppressWarnings("InlineFormatString") // too long to be read in the middle of code
  private static final String STYLE =
      """
      @page { size: A4; margin: 22mm 18mm 20mm 18mm;
        @top-left { content: "%s"; font-size: 8pt; font-family: "Lato"; }
        @top-right { content: "%s"; font-size: 8pt; font-family: "Lato"; }
        @bottom-right { content: "%s" counter(page) "%s" counter(pages) "%s"; font-size: 8pt;
          font-family: "Lato"; } }
      body { font-family: "Lato", "DejaVu Sans", Verdana, sans-serif; font-size: 10pt; color: #17211e;
        background: #ffffff; line-height: 1.4; max-width: 190mm; margin: 0 auto; }
      h1 { font-size: 16pt; } h2 { font-size: 13pt; border-bottom: 1px solid #17211e;
        margin-top: 1.6em; } h3 { font-size: 11pt; } h4 { font-size: 9.5pt; margin: 0.8em 0 0.2em; }
      h1, h2, h3, h4 { page-break-after: avoid; }
      table { border-collapse: collapse; margin: 0.4em 0 0.8em;
        -fs-table-paginate: paginate; }
      th, td { border-bottom: 1px solid #cbd4cf; text-align: left; vertical-align: top;
        padding: 2px 10px 2px 0; }
      tr { page-break-inside: avoid; } table.short, .together { page-break-inside: avoid; }
      svg.shape { display: block; } .mono.hash { font-size: 6pt; }
      .time, .whole { white-space: nowrap; }
      table.wide { width: 100%%; } table.matrix { font-size: 5pt; }
      table.matrix th, table.matrix td { padding: 1px 3px 1px 0; white-space: nowrap; }
      table.hashes td { font-size: 6.5pt; }
      table.signature { width: 100%%; } table.signature td, table.signature th {
        border: 1px solid #17211e; padding: 4px; } table.signature td { height: 2.4em; width: 28%%; }
      .step { border-left: 1px solid #6b7a74; padding-left: 8px; margin-bottom: 0.9em; }
      .made-up { font-style: normal; font-size: 9pt; border: 1px dashed #5e5a52; padding: 1px 4px; }
      .banner, .verdict, .remedy { font-weight: bold; } .soft { font-size: 8pt; }
      .cautions { font-size: 8pt; } img { max-width: 90mm; max-height: 70mm; }
      .plot { page-break-inside: avoid; } .plot svg { max-width: 100%%; height: auto; }
      a { color: #036480; } .mono { font-family: "DejaVu Sans Mono", monospace; font-size: 7.5pt; }
      th { font-weight: bold; } th[scope="row"] { font-weight: normal; color: #4a5853; }
      .fitted { font-style: italic; }
      @media screen and (max-width: 640px) { body { padding: 0 10px; }
        table { display: block; overflow-x: auto; } .mono { overflow-wrap: anywhere; } }
      svg.mark { display: inline-block; vertical-align: middle; }
      """;

  /** The same on paper that lies. */
  public Page lying(int width_mm) {
    String style =
        "@page { size: A4 landscape; margin: 16mm 14mm 16mm 14mm; }\n"
            + "body { max-width: "
            + width_mm
            + "mm; }\n";
    return new Page(words, title, label, style + ownStyle);
  }

  /** The whole page; the body is written after its title. */
  public String html(Consumer<Html> body) {
    Html html = new Html();
    html.raw("<!DOCTYPE html>")
        .raw("<html xmlns=\"http://www.w3.org/1999/xhtml\"" + language() + "><head>")
        .raw("<meta charset=\"UTF-8\"/>")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>")
        .element("title", title)
        .raw("<meta name=\"description\" content=\"" + Html.escaped(title) + "\"/>")
        .raw("<style>\n" + style() + ownStyle + "</style></head><body>");
    body.accept(html);
    return UnbrokenTimes.in(html.raw("</body></html>").toString());
  }

  /** The language and the direction that the page is in. */
  private String language() {
    Messages spoken = words.messages();
    String code = Html.escaped(spoken.locale().toLanguageTag());
    String direction = spoken.direction().name().toLowerCase(Locale.ROOT);
    return " lang=\"" + code + "\" dir=\"" + direction + "\"";
  }

  private String style() {
    // the two places of the numbers are cut out of the sentence: CSS counts the pages
    String[] page = words.text("build-log.page", CUT, CUT).split(CUT, 3);
    return filled(
        STYLE, quoted(title), quoted(label), quoted(page[0]), quoted(page[1]), quoted(page[2]));
  }

  /**
   * A text inside a quoted CSS string in a style element; CSS swallows one blank after an escape.
   */
  public static String quoted(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (c < 128 && (Character.isLetterOrDigit(c) || c == ' ' || c == '-' || c == '.')) {
                safe.appendCodePoint(c);
              } else {
                safe.append('\\').append(String.format(Locale.ROOT, "%06x ", c));
              }
            });
    return safe.toString();
  }

  private static String filled(String pattern, Object... texts) {
    return String.format(Locale.ROOT, pattern, texts);
  }
}
