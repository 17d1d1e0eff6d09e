/** The commands that give a person something to begin with. */
@NullMarked
package faintwind.command.begin;

import org.jspecify.annotations.NullMarked;
