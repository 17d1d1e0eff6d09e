/**
 * The state of the heat balance in a field log: filter, smoother, strength of the walk, lost
 * heater, noise. What becomes of it is in {@link faintwind.calibration.speed}. Pure.
 */
@NullMarked
package faintwind.calibration.speed.state;

import org.jspecify.annotations.NullMarked;
