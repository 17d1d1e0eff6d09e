package faintwind.report.calibration;

import faintwind.report.figure.CalibrationPlots;
import faintwind.report.page.Chapter;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import java.util.List;

/** Two calibrations of one instrument on a page that stands alone. */
public final class ComparisonPage {
  private ComparisonPage() {}

  /** The page, XHTML so that it can also become a PDF. */
  public static String of(ComparisonTables tables) {
    LogWords words = new LogWords(tables.messages());
    String title = words.text("compare.title", tables.later().origin().instrumentId());
    return new Page(words, title, "", "")
        .html(
            html -> {
              html.element("h1", title);
              html.element("p", "verdict", tables.verdict());
              html.element("p", tables.which());
              html.list(tables.causes());
              Chapter to = new Chapter(html, words, 2);
              to.head("compare.speeds");
              to.say("compare.how");
              to.table(ComparisonTables.speedHeads(), tables.speeds());
              to.plot(
                  new CalibrationPlots(tables.messages())
                      .overlay(List.of(tables.earlier(), tables.later())));
              to.head("compare.changes");
              to.say("compare.changes.text");
              to.table(ComparisonTables.changeHeads(), tables.changes());
            });
  }
}
