/**
 * Plots and drawings on screen, with their cursor and their table. What is drawn comes from {@link
 * faintwind.report.figure}.
 */
@NullMarked
package faintwind.ui.figure;

import org.jspecify.annotations.NullMarked;
