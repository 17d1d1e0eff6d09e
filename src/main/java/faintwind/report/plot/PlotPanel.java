package faintwind.report.plot;

/**
 * One panel of a plot: a pair of axes and what stands between them.
 *
 * @param title quantity and unit, at the upper left
 * @param caption fine words at the upper right; empty for none
 * @param x horizontal axis
 * @param y vertical axis
 * @param content what is drawn
 * @param share of the height among the panels of a figure, above 0
 */
public record PlotPanel(
    String title, String caption, PlotAxis x, PlotAxis y, PlotContent content, double share) {
  public PlotPanel {
    if (!(share > 0)) {
      throw new IllegalArgumentException("share = " + share + ", allowed above 0");
    }
  }

  /** A panel without a caption that takes one share. */
  public static PlotPanel of(String title, PlotAxis x, PlotAxis y, PlotContent content) {
    return new PlotPanel(title, "", x, y, content, 1);
  }
}
