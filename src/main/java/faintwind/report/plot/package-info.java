/**
 * Plots and drawings, described by plain records and drawn once with Java2D for the window (as an
 * image) and for the report (as SVG). Nothing here computes physics or reads files of a project.
 */
@NullMarked
package faintwind.report.plot;

import org.jspecify.annotations.NullMarked;
