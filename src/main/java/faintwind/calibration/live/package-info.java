/**
 * What a live recording is made of: where it comes from, what a logger's lines mean, the rows that
 * arrive, and where the record has a break. Pure: lines and times arrive as arguments.
 */
@NullMarked
package faintwind.calibration.live;

import org.jspecify.annotations.NullMarked;
