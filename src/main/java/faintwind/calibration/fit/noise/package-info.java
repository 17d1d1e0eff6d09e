/** How recordings scatter about what a fit expects of them, and for how long. */
@NullMarked
package faintwind.calibration.fit.noise;

import org.jspecify.annotations.NullMarked;
