package faintwind.job.bench;

import faintwind.message.Messages;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The instruments of a folder on a page that stands alone, to be read or printed. */
public final class BenchPage {
  private static final int BAND_WIDTH = 120;

  private BenchPage() {}

  /** The page, XHTML so that it can also become a PDF. */
  public static String of(String folder, List<BenchRow> rows, Messages messages) {
    LogWords words = new LogWords(messages);
    BenchText text = new BenchText(messages);
    String title = words.text("bench-list.title", folder, rows.size());
    return new Page(words, title, "", "")
        .html(
            html -> {
              html.element("h1", title);
              html.element("p", words.text("bench-list.band"));
              List<List<String>> cells = new ArrayList<>();
              for (BenchRow row : rows) {
                cells.add(
                    List.of(
                        Html.escaped(row.nameAmong(rows)),
                        Html.escaped(text.need(row)),
                        String.join("<br/>", text.known(row).stream().map(Html::escaped).toList()),
                        row.inForce().flatMap(f -> f.range()).map(BenchPage::band).orElse("")));
              }
              List<String> heads =
                  Stream.of("instrument", "needs", "known", "range")
                      .map(head -> words.text("bench-list.column." + head))
                      .toList();
              html.markupTable("wide", heads, cells);
            });
  }

  /** A bar from 0.01 to 10 m/s on a logarithmic scale, the calibrated speeds filled. */
  private static String band(BenchRow.Range range) {
    double from = BAND_WIDTH * range.from();
    double to = BAND_WIDTH * range.to();
    return String.format(
        Locale.ROOT,
        "<svg class=\"mark\" xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"10\""
            + " role=\"img\"><title>%.3g–%.3g m/s</title><rect width=\"%d\" height=\"10\""
            + " fill=\"none\" stroke=\"#6b7a74\"/><rect x=\"%.1f\" width=\"%.1f\" height=\"10\""
            + " fill=\"#036480\"/></svg>",
        BAND_WIDTH,
        range.lowest_m_s(),
        range.highest_m_s(),
        BAND_WIDTH,
        from,
        Math.max(2, to - from));
  }
}
