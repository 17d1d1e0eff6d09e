package faintwind.calibration.fit.solving;

import faintwind.calibration.Cancelled;
import faintwind.calibration.fit.health.DataCheck;
import faintwind.calibration.fit.health.SignalCheck;
import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.setup.Setup;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.RunSet;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Fits an instrument's formula to all its recordings at once, by integrating the heat balance
 * (never by differentiating the noise).
 */
public final class FitToRuns {
  private FitToRuns() {}

  /**
   * The physics-shaped fit, or every reason why these runs cannot carry one.
   *
   * @param set the runs
   * @param cancelled asked at every step
   * @throws Cancelled where {@code cancelled} says so
   */
  public static Checked<FitResult> fit(RunSet set, BooleanSupplier cancelled) {
    return fit(set, PhysicsShaped.ID, cancelled);
  }

  /** The same with the model of that id. */
  public static Checked<FitResult> fit(RunSet set, String model, BooleanSupplier cancelled) {
    List<Problem> refusals = new ArrayList<>(DataCheck.refusals(set));
    if (refusals.isEmpty()) {
      refusals.addAll(SignalCheck.refusals(set.sound()));
    }
    if (!refusals.isEmpty()) {
      return Checked.refused(refusals);
    }
    Setting setting = Setting.of(set);
    return Checked.ok(fit(setting, setting.model(model), cancelled));
  }

  /**
   * The fit of the runs that are sound: those whose heat contradicts the others are set aside, and
   * those whose speed does lose it.
   *
   * @throws Minimum.NoneFound where no evaluation of the heat balance gives a number
   */
  public static FitResult fit(Setting setting, ResponseModel model, BooleanSupplier cancelled) {
    Set<String> aside = new HashSet<>(setting.leftOut());
    FitResult fit = fitWithout(setting, model, aside, cancelled);
    Optional<FitResult> exchanged = SpeedPatterns.withoutExchanged(fit, cancelled);
    if (exchanged.isPresent()) {
      return exchanged.get();
    }
    for (int round = 0; round < OwnChoices.MOST_ROUNDS_ASIDE; round++) {
      Set<String> more = SetAside.recordings(fit);
      if (more.isEmpty() || !enoughWithout(fit, aside, more)) {
        break;
      }
      aside.addAll(more);
      fit = fitWithout(setting, model, aside, cancelled);
    }
    return SpeedPatterns.withoutChanged(fit, cancelled);
  }

  /** The fit of unknowns as they stand, some of them held by whoever asks for it. */
  public static FitResult fit(Setting setting, Setup setup, BooleanSupplier cancelled) {
    return Refinement.of(setting, setup, cancelled).fromBestStart();
  }

  /** The same from the expected start only, for runners-up. */
  public static FitResult fitFromExpected(
      Setting setting, ResponseModel model, BooleanSupplier cancelled) {
    Set<String> out = setting.leftOut();
    return Refinement.of(setting, model, out, out, cancelled).fromExpected();
  }

  /**
   * The same of a rival to a fit: without its speeds and runs left out, and without the scan of the
   * carried air where it has lost by far.
   */
  public static FitResult rival(FitResult to, ResponseModel model, BooleanSupplier cancelled) {
    return Refinement.rival(to, model, cancelled).fromExpected(to.deviance() + OwnChoices.LOST);
  }

  /** The same fit of an instrument of whose class the others showed this, from where it rests. */
  public static FitResult among(FitResult fit, ClassKnown others, BooleanSupplier cancelled) {
    Setting setting = fit.setting().among(others);
    ResponseModel model = fit.setup().layout().model();
    return Refinement.of(setting, model, fit.setup().freed(), fit.aside(), cancelled)
        .fromWhere(fit);
  }

  /** The fit in which the rows and speeds of these runs do not count. */
  private static FitResult fitWithout(
      Setting setting, ResponseModel model, Set<String> aside, BooleanSupplier cancelled) {
    FitResult fit = Refinement.of(setting, model, aside, aside, cancelled).fromBestStart();
    return ContradictingSpeeds.freed(fit, cancelled);
  }

  private static boolean enoughWithout(FitResult fit, Set<String> aside, Set<String> more) {
    long left =
        fit.setup().speedColumns().keySet().stream()
            .filter(run -> !aside.contains(run) && !more.contains(run))
            .count();
    return left >= OwnChoices.LEAST_COUNTING;
  }
}
