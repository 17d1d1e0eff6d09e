/** Many instruments at once: what each is, needs and knows. */
@NullMarked
package faintwind.job.bench;

import org.jspecify.annotations.NullMarked;
