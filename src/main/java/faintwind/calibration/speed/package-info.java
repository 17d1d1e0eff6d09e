/**
 * From a field log to air speed: state estimation with the heat balance as model, air correction,
 * averaging, uncertainty and flags. Pure; one row in, one row out, in bounded memory.
 */
@NullMarked
package faintwind.calibration.speed;

import org.jspecify.annotations.NullMarked;
