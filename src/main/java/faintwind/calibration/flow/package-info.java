/**
 * Flow of air through an opening: where to measure in it, and the integral of the speeds with its
 * uncertainty. Pure.
 */
@NullMarked
package faintwind.calibration.flow;

import org.jspecify.annotations.NullMarked;
