/** The page of a calibration and its sections in the build log. */
@NullMarked
package faintwind.report.calibration;

import org.jspecify.annotations.NullMarked;
