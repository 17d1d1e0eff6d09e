/** Jobs around the turntable: plan, beat, clicks, corrections, runs. */
@NullMarked
package faintwind.job.turntable;

import org.jspecify.annotations.NullMarked;
