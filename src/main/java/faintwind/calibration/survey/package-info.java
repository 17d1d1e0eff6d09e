/**
 * A list of places visited with one instrument: how long to wait at each, and which of them differ
 * by more than the uncertainty allows. Pure.
 */
@NullMarked
package faintwind.calibration.survey;

import org.jspecify.annotations.NullMarked;
