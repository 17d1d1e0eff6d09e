package faintwind.report.sheet;

import faintwind.message.Messages;
import faintwind.report.page.BuildLogStyle;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import java.util.List;

/** A parts list as a page that stands alone and prints on A4, lying. */
public final class PartsPage {
  private PartsPage() {}

  /**
   * What stands on the page.
   *
   * @param title the design and the number of instruments
   * @param measures what the instrument will be able to measure: name, value, range
   * @param heads heads of the columns of the list
   * @param rows its rows
   * @param cost what it costs, in a sentence
   */
  public record Content(
      String title,
      List<List<String>> measures,
      List<String> heads,
      List<List<String>> rows,
      String cost) {
    public Content {
      measures = List.copyOf(measures);
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
    }
  }

  /** The page, XHTML so that it can also become a PDF. */
  public static String of(Content content, Messages messages) {
    Html page = new Html();
    page.raw("<!DOCTYPE html>")
        .raw("<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + lang(messages) + "\">")
        .raw("<head><meta charset=\"UTF-8\"/>")
        .element("title", content.title())
        .raw("<style>\n" + style(content.title(), messages) + "</style></head><body>")
        .element("h1", content.title())
        .element("h2", messages.text("parts.page.buy"))
        .openTable("wide", content.heads());
    content.rows().forEach(page::row);
    page.closeTable().element("p", "banner", content.cost());
    page.element("p", "soft", messages.text("parts.page.spares"));
    page.element("h2", messages.text("parts.page.measure"))
        .openTable(
            "measures",
            List.of(
                messages.text("parts.page.outcome"),
                messages.text("parts.page.value"),
                messages.text("parts.page.range")));
    content.measures().forEach(page::row);
    page.closeTable().element("p", "soft", messages.text("parts.page.measure-note"));
    return page.raw("</body></html>").toString();
  }

  private static String lang(Messages messages) {
    return Html.escaped(messages.locale().getLanguage());
  }

  private static String style(String title, Messages messages) {
    String common = BuildLogStyle.css(title, "", new LogWords(messages));
    return common.replace("size: A4;", "size: A4 landscape;")
        + "body { max-width: 260mm; } table.wide td { font-size: 7.5pt; }\n"
        + "table.wide th { font-size: 7.5pt; } table.wide td:last-child { text-align: right; }\n";
  }
}
