/** Fits of several instruments that share what physics shares. */
@NullMarked
package faintwind.calibration.fit.pooling;

import org.jspecify.annotations.NullMarked;
