/** A class of pairs: made once, looked at together, signed and reported. */
@NullMarked
package faintwind.job.lesson;

import org.jspecify.annotations.NullMarked;
