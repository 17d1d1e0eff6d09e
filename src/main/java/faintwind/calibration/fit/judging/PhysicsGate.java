package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.health.PhysicsBounds;
import faintwind.calibration.fit.health.PhysicsBounds.Range;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.health.Slip;
import faintwind.calibration.fit.setup.CountingHabit;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.BuildFacts;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether a physics-shaped fit is that of a heated ball in air at all. It stands before any choice
 * among the models: another form must not swallow what this one calls impossible.
 */
final class PhysicsGate {
  /** The unknowns that say how the loss goes, of which published forms leave little open. */
  private static final List<String> SHAPE =
      List.of("tilt", "mixing", "warmth", "sensitivity_slope");

  private final FitResult fit;
  private final double forced;
  private final double natural;
  private final boolean known;

  PhysicsGate(FitResult fit) {
    this.fit = fit;
    Optional<BuildFacts> build = fit.setting().build();
    this.known =
        build.isPresent()
            && build.get().diameter_m().isPresent()
            && build.get().heatedMass_kg().isPresent();
    this.forced = value("forced");
    this.natural = value("natural");
  }

  private double value(String name) {
    return fit.values()[index(name)];
  }

  private int index(String name) {
    for (int i = 0; i < fit.setup().unknowns().size(); i++) {
      if (fit.setup().unknowns().get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("name = " + name + ", no unknown of this fit");
  }

  /** What physics does not allow, each by name; empty where the fit may stand. */
  List<Problem> refusals() {
    List<Problem> found = new ArrayList<>();
    countedWrongly().ifPresent(found::add);
    outside("fit.impossible.ratio", forced / natural, PhysicsBounds.RATIO, found);
    outside(
        "fit.impossible.forced",
        forced,
        known ? PhysicsBounds.FORCED_KNOWN : PhysicsBounds.FORCED,
        found);
    outside(
        "fit.impossible.natural",
        natural,
        known ? PhysicsBounds.NATURAL_KNOWN : PhysicsBounds.NATURAL,
        found);
    outside("fit.impossible.conduction", value("conduction"), PhysicsBounds.CONDUCTION_1_S, found);
    double leads = leadShare();
    if (leads > PhysicsBounds.MOST_LEADS) {
      found.add(
          Problem.error(
              "fit.impossible.leads",
              Where.NOWHERE,
              SignalCheck.text(100 * leads),
              SignalCheck.text(100 * PhysicsBounds.MOST_LEADS)));
    }
    return found;
  }

  /**
   * Turns of all runs counted twice or half: the times beside the counted ones, and the ratio of
   * the multipliers with its own uncertainty, against how seldom such a slip is.
   */
  private Optional<Problem> countedWrongly() {
    double ratio = Math.log(forced / natural);
    double u = Math.hypot(PhysicsBounds.U_RATIO, uRatio());
    for (Slip slip : List.of(Slip.TWICE, Slip.HALF)) {
      double shifted = ratio + PhysicsBounds.FORCED_BY_DIAMETER * Math.log(slip.factor());
      double physics = (ratio * ratio - shifted * shifted) / (2 * u * u);
      double times = CountingHabit.slipEvidence(fit.setting().heated(), slip.factor());
      if (times > 0 && times + physics > OwnChoices.SELDOM) {
        return Optional.of(
            Problem.error(
                "fit.counted." + slip.id(), Where.NOWHERE, SignalCheck.text(slip.factor())));
      }
    }
    return Optional.empty();
  }

  /** Relative standard uncertainty of the ratio from the fit. */
  private double uRatio() {
    double[][] covariance = fit.covariance();
    int f = index("forced");
    int n = index("natural");
    return Math.sqrt(
        Math.max(
            0,
            covariance[f][f] / (forced * forced)
                + covariance[n][n] / (natural * natural)
                - 2 * covariance[f][n] / (forced * natural)));
  }

  private static void outside(String id, double value, Range range, List<Problem> found) {
    if (!range.has(value)) {
      found.add(
          Problem.error(
              id,
              Where.NOWHERE,
              SignalCheck.text(value),
              SignalCheck.text(range.low()),
              SignalCheck.text(range.high())));
    }
  }

  /** The speed as written over the true one that would bring the forced part to its usual place. */
  double writtenOverTrue() {
    return Math.pow(forced / natural, -1 / PhysicsBounds.FORCED_BY_DIAMETER);
  }

  private double leadShare() {
    AirPoint air = AirPoint.of(fit.setting().referenceAir());
    double still = fit.formula().steadyDelta_K(0, fit.signal().supply_V(), air);
    return value("leads") / fit.formula().loss_1_s(0, still, air);
  }

  /**
   * Where the loss goes with speed and warmth as no ball's does, the unknown that lies farthest
   * from what is published. What changed along with the speeds and is on no record, such as a
   * supply that sags, an amplifier near its end or a fan in part of the session, bends the formula
   * until it follows: the residuals stay small, and the speeds are wrong.
   */
  static Optional<Problem> unlikeABall(FitResult fit) {
    if (!fit.model().equals(PhysicsShaped.ID)) {
      return Optional.empty();
    }
    double[] point = fit.solution().optimum().point();
    return IntStream.range(0, fit.setup().layout().formula())
        .filter(i -> SHAPE.contains(fit.setup().unknowns().get(i).name()))
        .filter(i -> Math.abs(point[i]) > OwnChoices.NO_BALL)
        .boxed()
        .max(Comparator.comparingDouble(i -> Math.abs(point[i])))
        .map(
            i ->
                Problem.warning(
                    "fit.no-ball." + fit.setup().unknowns().get(i).name(),
                    Where.NOWHERE,
                    Numerals.places(Math.abs(point[i]), 1)));
  }

  /** A caution where the multipliers are possible but a slip by two would explain them as well. */
  static Optional<Problem> caution(FitResult fit) {
    return fit.model().equals(PhysicsShaped.ID) ? new PhysicsGate(fit).caution() : Optional.empty();
  }

  private Optional<Problem> caution() {
    double ratio = forced / natural;
    if (known || PhysicsBounds.RATIO_USUAL.has(ratio)) {
      return Optional.empty();
    }
    return Optional.of(
        Problem.warning(
            ratio < 1 ? "fit.forced-weak" : "fit.forced-strong",
            Where.NOWHERE,
            SignalCheck.text(100 * Math.abs(ratio - 1))));
  }
}
