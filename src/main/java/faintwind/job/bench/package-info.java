/**
 * Many instruments at once: what each is, needs and knows. A recording made on the work bench is
 * looked at in {@code calibration.bench}.
 */
@NullMarked
package faintwind.job.bench;

import org.jspecify.annotations.NullMarked;
