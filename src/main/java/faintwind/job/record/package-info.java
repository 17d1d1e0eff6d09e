/** Jobs on the record of an instrument: enter, look, print, report, check. */
@NullMarked
package faintwind.job.record;

import org.jspecify.annotations.NullMarked;
