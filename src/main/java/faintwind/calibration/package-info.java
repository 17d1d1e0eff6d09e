/**
 * Numbers about runs and fits: recordings, arm speed, model family, fit, choice, uncertainty,
 * verdict, and the estimator that turns a signal into air speed. Pure; no clocks, files or threads.
 */
@NullMarked
package faintwind.calibration;

import org.jspecify.annotations.NullMarked;
