/** Jobs that make a calibration and keep it. */
@NullMarked
package faintwind.job.formula;

import org.jspecify.annotations.NullMarked;
