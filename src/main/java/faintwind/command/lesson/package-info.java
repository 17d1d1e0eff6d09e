/** The command for a class of pairs. */
@NullMarked
package faintwind.command.lesson;

import org.jspecify.annotations.NullMarked;
