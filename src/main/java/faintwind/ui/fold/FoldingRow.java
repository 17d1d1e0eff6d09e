package faintwind.ui.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * A row that goes on in further lines where what it holds does not fit beside one another at its
 * least width. Each line shares out its room as a row does: first what each child would like, then
 * the rest to those that grow.
 */
public class FoldingRow extends HBox {
  private static final double LINE_GAP = 0.5;

  private Optional<Lines> known = Optional.empty();

  public FoldingRow() {
    setMinHeight(USE_PREF_SIZE);
  }

  public FoldingRow(String styles, Node... nodes) {
    this();
    getChildren().addAll(nodes);
    getStyleClass().addAll(styles.split(" "));
    setMinHeight(USE_PREF_SIZE);
  }

  /** Whether it has more than one line at a width. */
  boolean folds(double width_px) {
    return at(width_px - sides()).lines().size() > 1;
  }

  /** What it holds, each with the width that it gets at a width. */
  Map<Node, Double> parts_px(double width_px) {
    Map<Node, Double> parts = new LinkedHashMap<>();
    for (Line line : at(width_px - sides()).lines()) {
      for (int i = 0; i < line.nodes().size(); i++) {
        parts.put(line.nodes().get(i), line.widths_px().get(i));
      }
    }
    return parts;
  }

  /** What it holds or how large that is changed. */
  @Override
  public void requestLayout() {
    known = Optional.empty();
    super.requestLayout();
  }

  /** Its lines at a width: words are measured once, however often a layout asks. */
  private record Lines(double within_px, List<Line> lines, List<Double> heights_px) {}

  private Lines at(double within_px) {
    Lines at =
        known
            .filter(k -> k.within_px() == within_px)
            .orElseGet(
                () -> {
                  List<Line> lines = lines(within_px);
                  return new Lines(within_px, lines, lines.stream().map(this::height).toList());
                });
    known = Optional.of(at);
    return at;
  }

  /** Children beside one another, each with its width. */
  private record Line(List<Node> nodes, List<Double> widths_px) {

    /** With the children on one baseline, or as high as the highest. */
    double height_px(boolean onBaseline) {
      double above = 0;
      double below = 0;
      for (int i = 0; i < nodes.size(); i++) {
        double height = height(nodes.get(i), widths_px.get(i));
        double over = onBaseline ? baseline(nodes.get(i), height) : 0;
        above = Math.max(above, over);
        below = Math.max(below, height - over);
      }
      return above + below;
    }

    double baseline_px() {
      double most = 0;
      for (int i = 0; i < nodes.size(); i++) {
        most = Math.max(most, baseline(nodes.get(i), height(nodes.get(i), widths_px.get(i))));
      }
      return most;
    }
  }

  private static double baseline(Node node, double height) {
    double own = node.getBaselineOffset();
    return own == BASELINE_OFFSET_SAME_AS_HEIGHT ? height : own;
  }

  private static double height(Node node, double width_px) {
    double most_px = Math.min(width_px, Math.max(node.minWidth(-1), node.maxWidth(-1)));
    double given = node.getContentBias() == Orientation.HORIZONTAL ? most_px : -1;
    return Math.max(node.minHeight(given), Math.min(node.maxHeight(given), node.prefHeight(given)));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return sides() + getManagedChildren().stream().mapToDouble(n -> n.minWidth(-1)).max().orElse(0);
  }

  @Override
  protected double computePrefHeight(double width) {
    double within = width < 0 ? prefWidth(-1) : width;
    Lines at = at(within - sides());
    double high = at.heights_px().stream().mapToDouble(this::snapSizeY).sum();
    int gaps = Math.max(0, at.lines().size() - 1);
    return snappedTopInset() + snappedBottomInset() + high + gap() * gaps;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    Lines at = at(getWidth() - sides());
    List<Line> lines = at.lines();
    VPos vertical = getAlignment().getVpos();
    double room = getHeight() - snappedTopInset() - snappedBottomInset();
    double y = snappedTopInset();
    for (int n = 0; n < lines.size(); n++) {
      Line line = lines.get(n);
      double high = lines.size() == 1 ? room : snapSizeY(at.heights_px().get(n));
      double x = snappedLeftInset() + begin(line);
      for (int i = 0; i < line.nodes().size(); i++) {
        double wide = line.widths_px().get(i);
        boolean fill = isFillHeight() && vertical != VPos.BASELINE;
        layoutInArea(
            line.nodes().get(i),
            x,
            y,
            wide,
            high,
            line.baseline_px(),
            null,
            true,
            fill,
            HPos.LEFT,
            vertical);
        x += wide + spacing();
      }
      y += high + gap();
    }
  }

  private double height(Line line) {
    return line.height_px(getAlignment().getVpos() == VPos.BASELINE);
  }

  /** Where a line that does not fill its width begins. */
  private double begin(Line line) {
    double used = spacing() * (line.nodes().size() - 1);
    for (double wide : line.widths_px()) {
      used += wide;
    }
    double rest = Math.max(0, getWidth() - sides() - used);
    return switch (getAlignment().getHpos()) {
      case LEFT -> 0;
      case CENTER -> rest / 2;
      case RIGHT -> rest;
    };
  }

  private List<Line> lines(double within_px) {
    List<Line> lines = new ArrayList<>();
    List<Node> line = new ArrayList<>();
    double used = 0;
    for (Node node : getManagedChildren()) {
      double wide = need(node);
      if (!line.isEmpty() && used + spacing() + wide > within_px + 0.5) {
        lines.add(shared(line, within_px));
        line = new ArrayList<>();
        used = 0;
      }
      used += wide + (line.isEmpty() ? 0 : spacing());
      line.add(node);
    }
    if (!line.isEmpty()) {
      lines.add(shared(line, within_px));
    }
    return lines;
  }

  private Line shared(List<Node> nodes, double within_px) {
    double[] widths = new double[nodes.size()];
    double[] wishes = new double[nodes.size()];
    double rest = within_px - spacing() * (nodes.size() - 1);
    double wished = 0;
    int growing = 0;
    for (int i = 0; i < widths.length; i++) {
      Node node = nodes.get(i);
      widths[i] = Math.min(need(node), within_px);
      wishes[i] = Math.max(0, preferred(node) - widths[i]);
      rest -= widths[i];
      wished += wishes[i];
      growing += grows(node) ? 1 : 0;
    }
    double share = wished <= 0 ? 0 : Math.min(1, Math.max(0, rest) / wished);
    double over = Math.max(0, rest - wished);
    for (int i = 0; i < widths.length; i++) {
      // whole pixels, but never less than words need: a fine screen has half pixels
      double shared = widths[i] + share * wishes[i];
      widths[i] = share < 1 ? Math.max(widths[i], Math.floor(shared)) : shared;
      if (grows(nodes.get(i))) {
        widths[i] += Math.floor(over / growing);
      }
    }
    return new Line(List.copyOf(nodes), Arrays.stream(widths).boxed().toList());
  }

  /** A row within this one folds only where it has a line to itself. */
  private double need(Node node) {
    double least = node instanceof FoldingRow ? preferred(node) : node.minWidth(-1);
    return snapSizeX(least);
  }

  private double preferred(Node node) {
    return snapSizeX(Math.max(node.minWidth(-1), node.prefWidth(-1)));
  }

  private static boolean grows(Node node) {
    return getHgrow(node) == Priority.ALWAYS;
  }

  private double sides() {
    return snappedLeftInset() + snappedRightInset();
  }

  private double spacing() {
    return snapSpaceX(getSpacing());
  }

  private double gap() {
    return snapSpaceY(getSpacing() * LINE_GAP);
  }
}
