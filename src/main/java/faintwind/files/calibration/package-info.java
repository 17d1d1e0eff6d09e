/** The calibration file. */
@NullMarked
package faintwind.files.calibration;

import org.jspecify.annotations.NullMarked;
