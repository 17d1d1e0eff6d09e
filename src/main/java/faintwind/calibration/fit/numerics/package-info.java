/**
 * Unknowns, the heat balance integrated with its sensitivities, and the least squares of all
 * recordings. Knows nothing of verdicts. Pure.
 */
@NullMarked
package faintwind.calibration.fit.numerics;

import org.jspecify.annotations.NullMarked;
