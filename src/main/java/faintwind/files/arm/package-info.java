/** The record of an arm: what the calibrations on it showed, one session each. */
@NullMarked
package faintwind.files.arm;

import org.jspecify.annotations.NullMarked;
