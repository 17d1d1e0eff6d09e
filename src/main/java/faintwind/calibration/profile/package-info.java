/**
 * What the lines of a foreign logger mean, said by a profile and never guessed: which column is
 * which, in what unit and form; and the reading of one line after the other by it. Pure: the lines
 * arrive as arguments.
 */
@NullMarked
package faintwind.calibration.profile;

import org.jspecify.annotations.NullMarked;
