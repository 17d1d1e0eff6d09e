package faintwind.report.paint;

import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotPanel;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Divides the picture among the panels, with their left and right edges in line. */
final class FigurePainter {
  private static final double GAP = 14;
  private static final double LANE = 26;

  private final PlotPen pen;

  FigurePainter(Graphics2D g, PictureStyle style) {
    this.pen = new PlotPen(g, style);
  }

  /** From the left to the right end of the axes, as a picture of that size would have them. */
  static PlotBox axes(List<PlotPanel> panels, PictureSize size, PictureStyle style) {
    Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    List<PanelPainter> painters = new FigurePainter(nowhere, style).painters(panels, size);
    double left = painters.stream().mapToDouble(p -> p.left(size.height())).max().orElse(0);
    return new PlotBox(left, 0, width(painters, left, size), size.height());
  }

  private List<PanelPainter> painters(List<PlotPanel> panels, PictureSize size) {
    List<PanelPainter> painters = new ArrayList<>();
    panels.forEach(panel -> painters.add(new PanelPainter(pen, panel, size.width())));
    return painters;
  }

  private static double width(List<PanelPainter> painters, double left, PictureSize size) {
    double right = painters.stream().mapToDouble(PanelPainter::right).max().orElse(0);
    return Math.max(20, size.width() - left - Math.min(right, size.width() * 0.35));
  }

  void draw(List<PlotPanel> panels, PictureSize size, Optional<PlotCursor> cursor) {
    List<PanelPainter> painters = painters(panels, size);
    double fixed = GAP * (painters.size() - 1);
    double shares = 0;
    for (PanelPainter painter : painters) {
      fixed += painter.above() + painter.below() + laneHeight(painter.panel());
      shares += painter.panel().content().lanes().isEmpty() ? painter.panel().share() : 0;
    }
    double free = Math.max(20 * painters.size(), size.height() - fixed);
    double left = painters.stream().mapToDouble(p -> p.left(free)).max().orElse(0);
    double width = width(painters, left, size);
    double y = 0;
    for (int i = 0; i < painters.size(); i++) {
      PanelPainter painter = painters.get(i);
      PlotPanel panel = painter.panel();
      double height =
          panel.content().lanes().isEmpty() ? free * panel.share() / shares : laneHeight(panel);
      PlotBox box = new PlotBox(left, y + painter.above(), width, height);
      painter.draw(y, box);
      int number = i;
      cursor.ifPresent(
          c ->
              painter.drawCursor(
                  box,
                  c.x(),
                  c.panel() == number ? OptionalDouble.of(c.y()) : OptionalDouble.empty()));
      y += painter.above() + height + painter.below() + GAP;
    }
  }

  private static double laneHeight(PlotPanel panel) {
    return LANE * panel.content().lanes().size();
  }
}
