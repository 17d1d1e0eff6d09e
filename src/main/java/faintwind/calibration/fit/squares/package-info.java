/** Nonlinear least squares, whatever they are of: the search, its steps and where it ends. */
@NullMarked
package faintwind.calibration.fit.squares;

import org.jspecify.annotations.NullMarked;
