/** The command that pools the instruments of a class. */
@NullMarked
package faintwind.command.pool;

import org.jspecify.annotations.NullMarked;
