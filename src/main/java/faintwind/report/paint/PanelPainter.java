package faintwind.report.paint;

import faintwind.report.picture.PlotToken;
import faintwind.report.plot.PlotAxis;
import faintwind.report.plot.PlotBox;
import faintwind.report.plot.PlotDash;
import faintwind.report.plot.PlotLine;
import faintwind.report.plot.PlotLook;
import faintwind.report.plot.PlotMarker;
import faintwind.report.plot.PlotPanel;
import faintwind.report.plot.PlotRange;
import faintwind.report.plot.PlotTicks;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Draws one panel: title, rules, base line, ticks, content. */
final class PanelPainter {
  private static final double TITLE_ROW = 26;
  private static final double HALF_TICK = 18;
  private static final double MOST_FOR_LABELS = 0.35;
  private static final double CAPTION_ROW = 18;
  private static final double CAPTION_GAP = 12;
  private static final double TICK_ROW = 22;
  private static final double NAME_ROW = 18;

  private final PlotPen pen;
  private final PlotPanel panel;
  private final double width;

  /**
   * Draws one panel.
   *
   * @param width of the whole figure
   */
  PanelPainter(PlotPen pen, PlotPanel panel, double width) {
    this.pen = pen;
    this.panel = panel;
    this.width = width;
  }

  PlotPanel panel() {
    return panel;
  }

  /** Height above the axes. */
  double above() {
    double title = panel.title().isEmpty() && panel.caption().isEmpty() ? 8 : TITLE_ROW;
    double listed = isListed() ? LinePainter.LABEL_ROW * named().size() : 0;
    return title + captionRows() + listed + keys().height();
  }

  /** Height of the rows of the caption under the title's. */
  private double captionRows() {
    return CAPTION_ROW * (captionLines().size() - (captionBesideTitle() ? 1 : 0));
  }

  /** A caption that does not fit beside the title is put under it. */
  private boolean captionBesideTitle() {
    double title =
        panel.title().isEmpty() ? 0 : PlotPen.width(panel.title(), pen.bodyStrong()) + CAPTION_GAP;
    return panel.title().isEmpty()
        || title + PlotPen.width(panel.caption(), pen.fine()) < width - right();
  }

  /** The caption in as many lines as the width asks for; at least one. */
  private List<String> captionLines() {
    return PlotPen.lines(panel.caption(), pen.fine(), width - right());
  }

  /** Height below the axes. */
  double below() {
    if (panel.x().name().isEmpty()) {
      return 4;
    }
    return TICK_ROW + (namedUnderneath() ? NAME_ROW : 0);
  }

  /** Width left of the axes. */
  double left(double height) {
    Font font = pen.fine();
    if (!panel.content().lanes().isEmpty()) {
      Font strong = pen.fineStrong();
      return panel.content().lanes().stream()
              .mapToDouble(l -> PlotPen.width(l.name(), strong))
              .max()
              .orElse(0)
          + 14;
    }
    return yTicks(height).stream().mapToDouble(t -> PlotPen.width(t.label(), font)).max().orElse(0)
        + 10;
  }

  /** Width right of the axes: the labels at the lines' ends, or half a tick label. */
  double right() {
    return isListed() ? HALF_TICK : Math.max(labels(), HALF_TICK);
  }

  private List<PlotLine> named() {
    return panel.content().lines().stream()
        .filter(l -> l.look().isLine() && !l.label().isEmpty())
        .toList();
  }

  /** Width of the labels at the lines' ends. */
  private double labels() {
    Font font = pen.fineStrong();
    List<PlotLine> named = named();
    double widest =
        named.stream().mapToDouble(l -> PlotPen.width(l.label(), font) + 12).max().orElse(0);
    return widest + (named.size() > 1 ? LinePainter.SAMPLE : 0);
  }

  /** Labels that would take the lines' room stand in rows over them. */
  private boolean isListed() {
    return panel.content().lanes().isEmpty() && labels() > MOST_FOR_LABELS * width;
  }

  private void drawListed(PlotBox box) {
    double y = box.y() - LinePainter.LABEL_ROW * named().size() - keys().height();
    for (PlotLine line : named()) {
      y += LinePainter.LABEL_ROW;
      LinePainter.drawLabel(pen, line, box.x(), y - 5, true);
    }
  }

  void draw(double top, PlotBox box) {
    drawTitle(top, box);
    PlotRange x = PlotRange.ofX(panel);
    PlotPlace px = new PlotPlace(x.low(), x.high(), box.x(), box.right(), isLogarithmic(panel.x()));
    if (!panel.content().lanes().isEmpty()) {
      new LanePainter(pen, px, box).draw(panel.content().lanes());
      return;
    }
    PlotRange y = PlotRange.ofY(panel);
    PlotPlace py =
        new PlotPlace(y.low(), y.high(), box.bottom(), box.y(), isLogarithmic(panel.y()));
    LinePainter lines = new LinePainter(pen, px, py, box);
    lines.drawUnder(panel.content());
    drawRules(py, box);
    drawBase(px, x, box);
    lines.drawLines(panel.content(), !isListed());
    if (isListed()) {
      drawListed(box);
    }
  }

  /**
   * Draws the reading cursor: a rule through the place, and a ring where a line is read.
   *
   * @param y number that is read in this panel; empty where another panel is read
   */
  void drawCursor(PlotBox box, double x, OptionalDouble y) {
    PlotRange xs = PlotRange.ofX(panel);
    PlotPlace px =
        new PlotPlace(xs.low(), xs.high(), box.x(), box.right(), isLogarithmic(panel.x()));
    double at = px.of(px.clamp(x));
    pen.rule(at, box.y(), at, box.bottom(), PlotToken.INK, 1);
    if (y.isPresent()) {
      PlotRange ys = PlotRange.ofY(panel);
      PlotPlace py =
          new PlotPlace(ys.low(), ys.high(), box.bottom(), box.y(), isLogarithmic(panel.y()));
      pen.marker(
          new PlotLook(PlotToken.ACT, PlotDash.NONE, PlotMarker.RING, 2),
          at,
          py.of(py.clamp(y.getAsDouble())));
    }
  }

  private static boolean isLogarithmic(PlotAxis axis) {
    return axis.scale() == PlotAxis.Scale.LOGARITHMIC;
  }

  private void drawTitle(double top, PlotBox box) {
    pen.words(panel.title(), 0, top + 15, pen.bodyStrong(), PlotToken.INK);
    double base = top + 15 + (captionBesideTitle() ? 0 : CAPTION_ROW);
    for (String line : captionLines()) {
      pen.words(line, box.right(), base, pen.fine(), PlotToken.INK_SOFT, PlotPen.Align.END);
      base += CAPTION_ROW;
    }
    keys().draw(box.right(), box.y());
  }

  /** Lines without a stroke have no end to carry a label: they are named beside a marker. */
  private KeyRows keys() {
    List<PlotLine> marked =
        panel.content().lines().stream()
            .filter(l -> !l.look().isLine() && !l.label().isEmpty())
            .toList();
    return new KeyRows(pen, marked, width - right());
  }

  /** The panel's own height is not settled yet: the finer ticks of a taller one count too. */
  private List<PlotTicks.Tick> yTicks(double height) {
    List<PlotTicks.Tick> all = new ArrayList<>(ticks(PlotRange.ofY(panel), height * panel.share()));
    all.addAll(ticks(PlotRange.ofY(panel), height / 2));
    return all;
  }

  /** A rule every 30 pixels or more, yet at least two where the axis has two round numbers. */
  private List<PlotTicks.Tick> ticks(PlotRange range, double height) {
    int most = (int) Math.max(2, Math.min(7, height / 30));
    List<PlotTicks.Tick> ticks = List.of();
    for (int count = most; count <= most + 3 && ticks.size() < 2; count++) {
      ticks = PlotTicks.of(panel.y().scale(), range, count, pen.style().locale());
    }
    return ticks;
  }

  private void drawRules(PlotPlace py, PlotBox box) {
    for (PlotTicks.Tick tick : ticks(new PlotRange(py.low(), py.high()), box.height())) {
      double y = Math.round(py.of(tick.value())) + 0.5;
      pen.rule(box.x(), y, box.right(), y, PlotToken.RULE, 1);
      pen.words(
          tick.label(), box.x() - 8, y + 4.5, pen.fine(), PlotToken.INK_SOFT, PlotPen.Align.END);
    }
  }

  private void drawBase(PlotPlace px, PlotRange x, PlotBox box) {
    double base = box.bottom();
    pen.rule(box.x(), base, box.right(), base, PlotToken.INK, 1.5);
    if (panel.x().name().isEmpty()) {
      return;
    }
    int most = (int) Math.max(3, Math.min(9, box.width() / 56));
    for (PlotTicks.Tick tick : PlotTicks.of(panel.x().scale(), x, most, pen.style().locale())) {
      double at = Math.round(px.of(tick.value())) + 0.5;
      pen.rule(at, base, at, base + 5, PlotToken.INK, 1);
      pen.words(tick.label(), at, base + 19, pen.fine(), PlotToken.INK_SOFT, PlotPen.Align.MIDDLE);
    }
    if (namedUnderneath()) {
      pen.words(
          panel.x().name(),
          box.right(),
          base + 36,
          pen.fineStrong(),
          PlotToken.INK,
          PlotPen.Align.END);
    }
  }

  /** Hours and minutes say themselves what they are. */
  private boolean namedUnderneath() {
    return panel.x().scale() != PlotAxis.Scale.CLOCK;
  }
}
