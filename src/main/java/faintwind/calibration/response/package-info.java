/**
 * The formulas: how the loss of the heated ball depends on air speed, difference and air, and the
 * way from difference to signal. Pure functions; fitting is elsewhere.
 */
@NullMarked
package faintwind.calibration.response;

import org.jspecify.annotations.NullMarked;
