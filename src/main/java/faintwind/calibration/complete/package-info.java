/**
 * Everything that another program needs to turn a signal into air speed by a calibration: its
 * constants, its formulas typed out, the settings of its filter, and test vectors. What reads or
 * writes them is elsewhere.
 */
@NullMarked
package faintwind.calibration.complete;

import org.jspecify.annotations.NullMarked;
