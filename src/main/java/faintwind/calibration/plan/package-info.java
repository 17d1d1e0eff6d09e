/**
 * The turntable session before it happens: which speeds, at which radius and beat, in which order,
 * for how long, and what uncertainty that promises. Pure: nothing here knows of clocks or files.
 */
@NullMarked
package faintwind.calibration.plan;

import org.jspecify.annotations.NullMarked;
