package faintwind.report.page;

import faintwind.report.paint.PlotFigure;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PictureSvg;
import java.util.List;

/**
 * Where a part of a report is written: the page, the words, and how deep its headings stand.
 *
 * @param html the page
 * @param words what is said
 * @param level of the headings, 1 to 6
 */
public record Chapter(Html html, LogWords words, int level) {
  private static final PictureSize PLOT = new PictureSize(640, 260);
  private static final PictureSize SMALL = new PictureSize(420, 250);
  private static final PictureSize RECORDING = new PictureSize(640, 300);

  /** A heading. */
  public void head(String key, Object... arguments) {
    html.element("h" + level, words.text(key, arguments));
  }

  /** A paragraph. */
  public void say(String key, Object... arguments) {
    html.element("p", words.text(key, arguments));
  }

  /** A table; the keys name its columns. Its numbers have the decimal mark of the language. */
  public void table(List<String> keys, List<List<String>> rows) {
    markupTable("wide", keys, rows.stream().map(r -> r.stream().map(this::cell).toList()).toList());
  }

  private String cell(String text) {
    return Html.cell(words.messages().numbers(text));
  }

  /** A table of a class, whose cells hold markup already; the keys name its columns. */
  public void markupTable(String cssClass, List<String> keys, List<List<String>> rows) {
    html.markupTable(cssClass, keys.stream().map(key -> words.text(key)).toList(), rows);
  }

  /** A plot with its summary under it. */
  public void plot(PlotFigure figure) {
    plot(figure, PLOT);
  }

  /** A small plot without a word under it; its summary is its accessible text. */
  public void smallPlot(PlotFigure figure) {
    html.block(
        "plot",
        () ->
            html.raw(PictureSvg.of(figure, SMALL, PictureStyle.report(words.messages().locale()))));
  }

  /** A recording with the strip of what is left over. */
  public void recording(PlotFigure figure) {
    plot(figure, RECORDING);
  }

  private void plot(PlotFigure figure, PictureSize size) {
    html.block(
        "plot",
        () ->
            html.raw(PictureSvg.of(figure, size, PictureStyle.report(words.messages().locale())))
                .element("p", "soft", figure.description()));
  }
}
