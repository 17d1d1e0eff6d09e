/**
 * What a fit begins with: its recordings and build as a setting, its unknowns with what is believed
 * of each, and the scatter between runs. Pure.
 */
@NullMarked
package faintwind.calibration.fit.setup;

import org.jspecify.annotations.NullMarked;
