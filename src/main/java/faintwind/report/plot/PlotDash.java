package faintwind.report.plot;

import java.awt.BasicStroke;

/** How a line is broken, so that series differ without colour. */
public enum PlotDash {
  SOLID,
  LONG,
  SHORT,
  LONG_SHORT,
  SHORT_DOTS,
  DOTS,
  /** No line: markers only. */
  NONE;

  public BasicStroke stroke(double width) {
    return switch (this) {
      case SOLID, NONE ->
          new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
      case LONG -> dashed(width, 10, 4);
      case SHORT -> dashed(width, 3, 4);
      case LONG_SHORT -> dashed(width, 14, 4, 3, 4);
      case SHORT_DOTS -> dashed(width, 7, 3, 2, 3, 2, 3);
      case DOTS -> dashed(width, 1.5f, 5);
    };
  }

  private static BasicStroke dashed(double width, float... pattern) {
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
  }
}
