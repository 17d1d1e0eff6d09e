/**
 * What recordings and runs show of themselves, before a fit and beside one: data that cannot be
 * fitted, signals that contradict a heated ball, and for each run how much heat it took against
 * what a formula expects. Knows no fit as a whole: that is {@code judging}'s. Pure.
 */
@NullMarked
package faintwind.calibration.fit.health;

import org.jspecify.annotations.NullMarked;
