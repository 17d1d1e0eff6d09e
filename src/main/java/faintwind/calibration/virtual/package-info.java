/**
 * The virtual instrument: a made-up build that behaves like two real balls, for rehearsal and for
 * studies of the fit. Its physics is richer than the fitted formula and shares no code with it.
 * Whatever comes from here is made up and must be labelled as rehearsal wherever it is shown.
 */
@NullMarked
package faintwind.calibration.virtual;

import org.jspecify.annotations.NullMarked;
