/** Two calibrations of one instrument against each other, and a short check of one. Pure. */
@NullMarked
package faintwind.calibration.compare;

import org.jspecify.annotations.NullMarked;
