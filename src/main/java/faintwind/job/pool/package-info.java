/** Jobs on instruments of one class. */
@NullMarked
package faintwind.job.pool;

import org.jspecify.annotations.NullMarked;
