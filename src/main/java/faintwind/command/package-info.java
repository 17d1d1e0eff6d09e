/** The commands of the command line, one a class: words in, job called, exit code out. */
@NullMarked
package faintwind.command;

import org.jspecify.annotations.NullMarked;
