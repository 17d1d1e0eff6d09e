package faintwind.report.paint;

import faintwind.report.picture.Picture;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import java.awt.Graphics2D;
import java.util.Optional;

/**
 * A plot while it is read: with its cursor drawn over it.
 *
 * @param figure the plot
 * @param cursor where it is read
 */
public record ReadFigure(PlotFigure figure, PlotCursor cursor) implements Picture {
  @Override
  public void draw(Graphics2D g, PictureSize size, PictureStyle style) {
    new FigurePainter(g, style).draw(figure.panels(), size, Optional.of(cursor));
  }

  @Override
  public String title() {
    return figure.title();
  }

  @Override
  public String description() {
    return figure.description();
  }
}
