package faintwind.report.plot;

import faintwind.report.picture.PlotToken;

/**
 * A stretch of the horizontal axis laid under the lines: below the floor, a spin, a gap.
 *
 * @param from lower end, in units of x
 * @param to upper end
 * @param label at its top; empty for none
 * @param fill colour of the area
 */
public record PlotSpan(double from, double to, String label, PlotToken fill) {}
