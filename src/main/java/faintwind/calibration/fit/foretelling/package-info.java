/** What a fit of runs that are not made yet would know: the planner's ground. Pure. */
@NullMarked
package faintwind.calibration.fit.foretelling;

import org.jspecify.annotations.NullMarked;
