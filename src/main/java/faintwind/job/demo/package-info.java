/** The whole main job on the shipped instrument. */
@NullMarked
package faintwind.job.demo;

import org.jspecify.annotations.NullMarked;
