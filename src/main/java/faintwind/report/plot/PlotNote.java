package faintwind.report.plot;

import faintwind.report.picture.PlotToken;
import java.util.List;

/**
 * A few words at a point of the plot; the first line is strong where there are more than one.
 *
 * @param x in units of the axis
 * @param y in units of the axis
 * @param lines the words
 * @param colour of the words
 */
public record PlotNote(double x, double y, List<String> lines, PlotToken colour) {
  public PlotNote {
    lines = List.copyOf(lines);
  }
}
