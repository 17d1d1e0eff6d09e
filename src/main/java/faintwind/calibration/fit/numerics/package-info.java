/**
 * Unknowns, the heat balance integrated with its sensitivities, whitening of the residuals, least
 * squares. Knows nothing of verdicts. Pure.
 */
@NullMarked
package faintwind.calibration.fit.numerics;

import org.jspecify.annotations.NullMarked;
