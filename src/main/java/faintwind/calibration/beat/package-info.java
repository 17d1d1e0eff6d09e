/**
 * The beat the arm is turned to, and the times of turns found from taps or clicks. Samples and
 * times come in as numbers; sound devices and files are elsewhere.
 */
@NullMarked
package faintwind.calibration.beat;

import org.jspecify.annotations.NullMarked;
