/**
 * Fitting: recordings into tracks, the heat balance integrated with its sensitivities, least
 * squares, choice among models, uncertainty, verdict and diagnosis. Pure.
 */
@NullMarked
package faintwind.calibration.fit;

import org.jspecify.annotations.NullMarked;
