/** The fields of a design: what can be typed of it, what follows from a change, its making. */
@NullMarked
package faintwind.physics.choice;

import org.jspecify.annotations.NullMarked;
