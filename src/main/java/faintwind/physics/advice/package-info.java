/** Which design to take, what a change would do, what to buy. */
@NullMarked
package faintwind.physics.advice;

import org.jspecify.annotations.NullMarked;
