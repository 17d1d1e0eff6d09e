package faintwind.report.sheet;

import faintwind.message.Messages;
import faintwind.report.page.Chapter;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.util.List;

/** A parts list as a page that stands alone and prints on A4, lying. */
public final class PartsPage {
  private static final String STYLE =
      """
      table.wide td, table.wide th { font-size: 7.5pt; }
      table.wide td:last-child { text-align: right; }
      """;

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
    return new Page(new LogWords(messages), content.title(), "", STYLE)
        .lying(260)
        .html(
            html -> {
              html.element("h1", content.title());
              Chapter chapter = new Chapter(html, new LogWords(messages), 2);
              chapter.head("parts.page.buy");
              html.table("wide", content.heads(), content.rows())
                  .element("p", "banner", content.cost())
                  .element("p", "soft", messages.text("parts.page.spares"));
              chapter.head("parts.page.measure");
              chapter.table(
                  List.of("parts.page.outcome", "parts.page.value", "parts.page.range"),
                  content.measures());
              html.element("p", "soft", messages.text("parts.page.measure-note"));
            });
  }
}
