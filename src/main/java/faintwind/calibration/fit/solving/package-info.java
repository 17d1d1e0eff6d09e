/**
 * The fit to all runs at once: starts, refinement, runs that are set aside or freed of their speed,
 * the share of carried air; and its result. Pure.
 */
@NullMarked
package faintwind.calibration.fit.solving;

import org.jspecify.annotations.NullMarked;
