/** How the loss wanders about a formula, and what weight that leaves the rows of a recording. */
@NullMarked
package faintwind.calibration.fit.wander;

import org.jspecify.annotations.NullMarked;
