/**
 * What a fit is worth: choice among models, diagnosis, contradictions, refits, budget of
 * uncertainty, verdict. Pure.
 */
@NullMarked
package faintwind.calibration.fit.judging;

import org.jspecify.annotations.NullMarked;
