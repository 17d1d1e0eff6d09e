/**
 * Drafts a profile from the first lines of a log, for a person to look at: what is taken for what
 * and why is told, and nothing is used before it is confirmed. Pure: the lines arrive as arguments.
 */
@NullMarked
package faintwind.calibration.draft;

import org.jspecify.annotations.NullMarked;
