/** The commands about what the air did. */
@NullMarked
package faintwind.command.air;

import org.jspecify.annotations.NullMarked;
