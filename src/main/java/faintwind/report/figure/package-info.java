/**
 * Each plot and drawing that the program shows: what stands in it. How it is painted is in {@link
 * faintwind.report.paint}.
 */
@NullMarked
package faintwind.report.figure;

import org.jspecify.annotations.NullMarked;
