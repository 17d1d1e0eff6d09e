/**
 * What the air did, from a converted log: means over stretches with the part of the uncertainty
 * that does not average away, and the figures of a whole log. Pure: rows arrive as arguments.
 */
@NullMarked
package faintwind.calibration.field;

import org.jspecify.annotations.NullMarked;
