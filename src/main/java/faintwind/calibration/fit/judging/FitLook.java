package faintwind.calibration.fit.judging;

import faintwind.calibration.Calibration;
import faintwind.calibration.Cancelled;
import faintwind.calibration.Parameter;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.StraightLineLook;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * What a calibration was drawn from, to be shown beside it; none of it is in its file.
 *
 * @param runs the runs
 * @param recordings measured and fitted signals; empty where a fit of the same runs no longer gives
 *     the same formula
 * @param straightLine the straight-line look
 */
public record FitLook(
    List<Run> runs, List<FittedRecording> recordings, StraightLineLook straightLine) {
  public FitLook {
    runs = List.copyOf(runs);
    recordings = List.copyOf(recordings);
  }

  /** The look at a fit that was just made. */
  public static FitLook of(FitResult fit, Calibration calibration, List<Run> runs) {
    return new FitLook(runs, FittedRecording.of(fit), StraightLineLook.of(calibration, runs));
  }

  /** The look without the fitted signals, which takes no time. */
  public static FitLook withoutFit(Calibration calibration, List<Run> runs) {
    return new FitLook(runs, List.of(), StraightLineLook.of(calibration, runs));
  }

  /**
   * The look at a calibration that was read again: its model is fitted to its runs once more.
   *
   * @param set the very runs it was made from
   * @param cancelled asked at every step
   * @throws Cancelled where {@code cancelled} says so
   */
  public static FitLook again(Calibration calibration, RunSet set, BooleanSupplier cancelled) {
    String model = calibration.formula().model();
    Setting setting = Setting.of(set);
    ResponseModel response = setting.model(model);
    // as the choice among the models fits them
    FitResult fit =
        model.equals(PhysicsShaped.ID)
            ? FitToRuns.fit(setting, response, cancelled)
            : FitToRuns.fitFromExpected(setting, response, cancelled);
    return same(fit.formulaFit().parameters(), calibration.formula().parameters())
        ? of(fit, calibration, set.runs())
        : withoutFit(calibration, set.runs());
  }

  private static boolean same(List<Parameter> fitted, List<Parameter> written) {
    if (fitted.size() != written.size()) {
      return false;
    }
    for (int i = 0; i < fitted.size(); i++) {
      Parameter is = fitted.get(i);
      Parameter was = written.get(i);
      double apart = Math.abs(is.value() - was.value());
      if (!is.name().equals(was.name())
          || apart > OwnChoices.SAME_PARAMETER * Math.max(is.u(), was.u())) {
        return false;
      }
    }
    return true;
  }
}
