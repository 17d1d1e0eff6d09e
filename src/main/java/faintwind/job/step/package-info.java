/** One step of the checklist without a window: what it says and asks, and what is entered in it. */
@NullMarked
package faintwind.job.step;

import org.jspecify.annotations.NullMarked;
