/**
 * What a short recording on the bench shows before any calibration: zero, drift, scatter, 1/f
 * corner, mains pick-up, the rise after switching on, the fall after a breath. Pure.
 */
@NullMarked
package faintwind.calibration.bench;

import org.jspecify.annotations.NullMarked;
