/**
 * Recordings as the fit takes them: rows on a grid, what the supply and the air did meanwhile, the
 * turns of the arm, spikes and zero readings. Pure.
 */
@NullMarked
package faintwind.calibration.fit.track;

import org.jspecify.annotations.NullMarked;
