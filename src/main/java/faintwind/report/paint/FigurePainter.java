package faintwind.report.paint;

import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotPanel;
import java.awt.Graphics2D;
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

  void draw(List<PlotPanel> panels, PictureSize size, Optional<PlotCursor> cursor) {
    List<PanelPainter> painters = new ArrayList<>();
    panels.forEach(panel -> painters.add(new PanelPainter(pen, panel, size.width())));
    double fixed = GAP * (painters.size() - 1);
    double shares = 0;
    for (PanelPainter painter : painters) {
      fixed += painter.above() + painter.below() + laneHeight(painter.panel());
      shares += painter.panel().content().lanes().isEmpty() ? painter.panel().share() : 0;
    }
    double free = Math.max(20 * painters.size(), size.height() - fixed);
    double left = painters.stream().mapToDouble(p -> p.left(free)).max().orElse(0);
    double right = painters.stream().mapToDouble(PanelPainter::right).max().orElse(0);
    right = Math.min(right, size.width() * 0.35);
    double width = Math.max(20, size.width() - left - right);
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
