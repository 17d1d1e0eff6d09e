package faintwind.report.plot;

import java.util.List;

/**
 * One series of a plot.
 *
 * @param label written at the line's end, or beside a sample of the marker; empty for none
 * @param pieces unbroken pieces in order of x; a gap is drawn as nothing
 * @param look how it is drawn
 */
public record PlotLine(String label, List<PlotPoints> pieces, PlotLook look) {
  public PlotLine {
    pieces = pieces.stream().filter(p -> !p.isEmpty()).toList();
  }

  /** A series of one piece. */
  public static PlotLine of(String label, PlotPoints points, PlotLook look) {
    return new PlotLine(label, List.of(points), look);
  }
}
