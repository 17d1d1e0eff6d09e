/**
 * A run and its recording: times, signal, air, arm, chain. What is made of many runs is in {@link
 * faintwind.calibration}. Pure.
 */
@NullMarked
package faintwind.calibration.run;

import org.jspecify.annotations.NullMarked;
