package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether the loss goes with speed and warmth as that of a ball. What changed along with the speeds
 * and is on no record, such as a supply that sags, an amplifier near its end or a fan in part of
 * the session, bends the formula until it follows: the residuals stay small, and the speeds are
 * wrong.
 */
final class LossShape {
  /** The unknowns that say how the loss goes, of which published forms leave little open. */
  private static final List<String> UNKNOWNS =
      List.of("tilt", "mixing", "warmth", "sensitivity_slope");

  private LossShape() {}

  /** The unknown that lies farthest from what is published, where none of a ball lies so far. */
  static Optional<Problem> off(FitResult fit) {
    if (!fit.model().equals(PhysicsShaped.ID)) {
      return Optional.empty();
    }
    double[] point = fit.solution().optimum().point();
    return IntStream.range(0, fit.setup().layout().formula())
        .filter(i -> UNKNOWNS.contains(name(fit, i)))
        .filter(i -> Math.abs(point[i]) > OwnChoices.NO_BALL)
        .boxed()
        .max(Comparator.comparingDouble(i -> Math.abs(point[i])))
        .map(i -> problem(fit.setup().unknowns().get(i), point[i]));
  }

  private static String name(FitResult fit, int i) {
    return fit.setup().unknowns().get(i).name();
  }

  private static Problem problem(Unknown unknown, double x) {
    return Problem.warning(
        "fit.no-ball." + unknown.name(), Where.NOWHERE, Numerals.places(Math.abs(x), 1));
  }
}
