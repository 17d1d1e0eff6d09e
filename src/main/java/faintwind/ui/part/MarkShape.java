package faintwind.ui.part;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import javafx.scene.transform.Scale;

/**
 * One mark, drawn as a piece of wire on a grid of 28 by 14 and scaled to the text size. It always
 * has an accessible text, since the word is left out in a row of eight lengths.
 */
public final class MarkShape extends Region {
  private static final double GRID_WIDTH = 28;
  private static final double GRID_HEIGHT = 14;
  private static final int LENGTHS = 5;

  private final Group wire = new Group();

  public MarkShape(Mark mark, String accessibleText) {
    this(mark, accessibleText, 0.4);
  }

  /**
   * A mark whose waiting form is filled in part.
   *
   * @param part share of the waiting time that has gone, 0 to 1; without meaning for other marks
   */
  public MarkShape(Mark mark, String accessibleText, double part) {
    getStyleClass().add("mark");
    getChildren().add(wire);
    wire.setManaged(false);
    setAccessibleRole(AccessibleRole.TEXT);
    show(mark, accessibleText, part);
  }

  /** Changes the mark in place. */
  public void show(Mark mark, String accessibleText, double part) {
    getStyleClass().removeIf(name -> name.startsWith("mark-"));
    getStyleClass().add(mark.styleClass());
    wire.getChildren().setAll(mark == Mark.WAITING ? lengths(part) : pieces(mark));
    setAccessibleText(accessibleText);
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double scale = Math.min(getWidth() / GRID_WIDTH, getHeight() / GRID_HEIGHT);
    wire.getTransforms().setAll(new Scale(scale, scale));
    wire.setLayoutX(0);
    wire.setLayoutY((getHeight() - GRID_HEIGHT * scale) / 2);
  }

  private static List<SVGPath> pieces(Mark mark) {
    return switch (mark) {
      case READY -> List.of(piece("M4,4H24A3,3 0 0 1 24,10H4A3,3 0 0 1 4,4Z", "wire-outline", 1.5));
      case DONE -> List.of(piece("M3.5,7H24.5", "wire", 7));
      case DOING ->
          List.of(piece("M1,7Q3.17,17.4 5.33,7T9.67,7T14,7T18.33,7T22.67,7T27,7", "wire", 2.6));
      case ATTENTION -> List.of(piece("M1.5,10.5H9L15,1.5L18,10.5H26.5", "wire", 3));
      case BLOCKED -> List.of(piece("M1.5,7H8M20,7H26.5M6,13L11,1M17,13L22,1", "wire", 3));
      case CORRECTED ->
          List.of(
              piece("M1,3.5H27", "wire", 1.4),
              piece("M10,7L18,0", "wire", 1.8),
              piece("M2,11H26", "wire", 4));
      case REHEARSAL -> List.of(piece("M1,3.5H27M1,10.5H27", "wire-dashed", 1.6));
      case WAITING -> throw new IllegalArgumentException("mark WAITING is drawn by lengths()");
    };
  }

  private static List<SVGPath> lengths(double part) {
    return IntStream.range(0, LENGTHS)
        .mapToObj(
            i -> {
              double x = 0.65 + 5.7 * i;
              String kind = (i + 0.5) / LENGTHS < part ? "wire-full" : "wire-outline";
              return piece("M" + x + ",3H" + (x + 4.2) + "V11H" + x + "Z", kind, 1.3);
            })
        .toList();
  }

  private static SVGPath piece(String outline, String styleClass, double width) {
    SVGPath path = new SVGPath();
    path.setContent(outline);
    path.getStyleClass().add(styleClass);
    path.setStrokeWidth(width);
    return path;
  }
}
