/**
 * In which language the program speaks. Which files there are and how they are read is for {@code
 * files}; what a text may be is said in {@code message}.
 */
@NullMarked
package faintwind.job.language;

import org.jspecify.annotations.NullMarked;
