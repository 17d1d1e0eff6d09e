/** Jobs about what the air did: the figures of a log, the flow through an opening, a survey. */
@NullMarked
package faintwind.job.air;

import org.jspecify.annotations.NullMarked;
