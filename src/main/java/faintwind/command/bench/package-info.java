/** Commands that look at one instrument or at many. */
@NullMarked
package faintwind.command.bench;

import org.jspecify.annotations.NullMarked;
