/** Jobs that turn field logs into air speed. */
@NullMarked
package faintwind.job.field;

import org.jspecify.annotations.NullMarked;
