package faintwind.calibration.fit.pooling;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.KnownBefore;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Whether what was said of the carried air before the runs, as a stated share or by the record of
 * an arm, agrees with what the same recordings show by themselves.
 */
public final class CarriedBelief {
  /** Standard uncertainties by which both contradict one another (own choice). */
  private static final double APART = 3.5;

  private CarriedBelief() {}

  /**
   * The contradiction, where there is one; empty, too, where nothing was said.
   *
   * @param fit of the runs with what was said
   * @param set the runs
   * @param cancelled asked at every step
   */
  public static Optional<Problem> contradicted(
      FitResult fit, RunSet set, BooleanSupplier cancelled) {
    return fit.carriedSaid().flatMap(said -> contradicted(said, set, cancelled));
  }

  private static Optional<Problem> contradicted(
      Uncertain said, RunSet set, BooleanSupplier cancelled) {
    boolean stated =
        set.runs().stream()
            .flatMap(r -> r.arm().stream())
            .anyMatch(a -> a.swirlShare().isPresent());
    Optional<FitResult> alone =
        FitToRuns.fit(unsaid(set), cancelled)
            .fold((fits, notes) -> Optional.of(fits), problems -> Optional.empty());
    return alone
        .map(FitResult::carriedShare)
        .filter(shown -> apart(said, shown) > APART)
        .map(shown -> problem(stated, said, shown));
  }

  private static double apart(Uncertain said, Uncertain shown) {
    double u = Math.hypot(said.u().orElseThrow(), shown.u().orElseThrow());
    return Math.abs(shown.value() - said.value()) / u;
  }

  private static Problem problem(boolean stated, Uncertain said, Uncertain shown) {
    return Problem.warning(
        stated ? "fit.carried-said.stated" : "fit.carried-said.arm",
        Where.NOWHERE,
        percent(said.value()),
        percent(said.u().orElseThrow()),
        percent(shown.value()),
        percent(shown.u().orElseThrow()));
  }

  private static String percent(double share) {
    return Numerals.places(100 * share, 1);
  }

  /** The same runs, of whose carried air nothing is said. */
  private static RunSet unsaid(RunSet set) {
    KnownBefore known =
        new KnownBefore(set.known().build(), Optional.empty(), set.known().others());
    return new RunSet(set.runs().stream().map(CarriedBelief::unsaid).toList(), set.chain(), known);
  }

  private static Run unsaid(Run run) {
    return run.arm().map(arm -> run.turned(unsaid(arm))).orElse(run);
  }

  private static ArmTurning unsaid(ArmTurning arm) {
    return new ArmTurning(
        arm.radius_m(),
        arm.turns(),
        arm.turnsTime_s(),
        arm.spinStart_s(),
        arm.spinStop_s(),
        Optional.empty(),
        arm.firstClick_s());
  }
}
