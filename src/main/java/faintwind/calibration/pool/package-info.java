/** What instruments of one design on one arm share, learned from all of them. */
@NullMarked
package faintwind.calibration.pool;

import org.jspecify.annotations.NullMarked;
