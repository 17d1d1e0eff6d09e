/** The plan of a turntable session as a file. */
@NullMarked
package faintwind.files.plan;

import org.jspecify.annotations.NullMarked;
