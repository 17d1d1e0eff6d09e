package faintwind.calibration.fit.pooling;

import faintwind.calibration.pool.StandsOut;
import faintwind.calibration.run.ClassKnown;
import java.util.Optional;

/**
 * One instrument of a class.
 *
 * @param <F> a fit of it
 * @param fit with what the others say; alone, where it stands out
 * @param heard what the others said; nothing where it stands out, or all others do
 * @param standsOut in what, where it does
 */
public record ClassMember<F>(F fit, ClassKnown heard, Optional<StandsOut> standsOut) {}
