package faintwind.report.plot;

import faintwind.report.picture.PlotToken;

/**
 * A range of the vertical axis laid under the lines across the whole width, such as ± 5 %.
 *
 * @param from lower end, in units of y
 * @param to upper end
 * @param fill colour of the area
 */
public record PlotStripe(double from, double to, PlotToken fill) {}
