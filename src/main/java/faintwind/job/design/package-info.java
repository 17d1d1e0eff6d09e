/** Jobs before anything is bought: size, advise, compare, list the parts. */
@NullMarked
package faintwind.job.design;

import org.jspecify.annotations.NullMarked;
