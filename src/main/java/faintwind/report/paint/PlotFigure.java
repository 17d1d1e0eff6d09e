package faintwind.report.paint;

import faintwind.report.picture.Picture;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotSummary;
import faintwind.report.plot.PlotTable;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;

/**
 * A plot: panels one above the other with their left and right edges in line.
 *
 * @param title what it shows, for the accessible name and the heading over the table
 * @param description the summary in words, see {@link PlotSummary}
 * @param panels from top to bottom, at least one
 */
public record PlotFigure(String title, String description, List<PlotPanel> panels)
    implements Picture {
  public PlotFigure {
    panels = List.copyOf(panels);
    if (panels.isEmpty()) {
      throw new IllegalArgumentException("a figure needs at least one panel");
    }
  }

  @Override
  public void draw(Graphics2D g, PictureSize size, PictureStyle style) {
    new FigurePainter(g, style).draw(panels, size, Optional.empty());
  }

  /** From the left to the right end of its axes, as a picture of that size would have them. */
  public PlotBox axes(PictureSize size, PictureStyle style) {
    return FigurePainter.axes(panels, size, style);
  }

  /** The plotted numbers as tables, one a panel, every number that was given (not decimated). */
  public List<PlotTable> tables() {
    return panels.stream().map(PlotTable::of).toList();
  }
}
