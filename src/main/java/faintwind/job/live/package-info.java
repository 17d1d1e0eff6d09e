/** Jobs on a source that is speaking now: listen, record, guide, rehearse. */
@NullMarked
package faintwind.job.live;

import org.jspecify.annotations.NullMarked;
