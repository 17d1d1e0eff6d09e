/** The design sheet: every outcome of a design with its interval and verdict. */
@NullMarked
package faintwind.physics.sheet;

import org.jspecify.annotations.NullMarked;
