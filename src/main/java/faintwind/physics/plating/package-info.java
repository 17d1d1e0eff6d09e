/** Charge, thickness, current and hydrogen of an electroplated coat. */
@NullMarked
package faintwind.physics.plating;

import org.jspecify.annotations.NullMarked;
