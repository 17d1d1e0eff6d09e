/** Painting of plots with Java2D. */
@NullMarked
package faintwind.report.paint;

import org.jspecify.annotations.NullMarked;
