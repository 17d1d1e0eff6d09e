/**
 * What a fit found of the instrument against what its design, weighed parts and measured supply
 * say. Pure; knows nothing of fits or files.
 */
@NullMarked
package faintwind.calibration.build;

import org.jspecify.annotations.NullMarked;
