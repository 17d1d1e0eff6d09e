/** The commands that enter something in an instrument's record. */
@NullMarked
package faintwind.command.record;

import org.jspecify.annotations.NullMarked;
