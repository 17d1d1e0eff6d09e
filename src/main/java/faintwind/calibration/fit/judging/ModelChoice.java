package faintwind.calibration.fit.judging;

import faintwind.calibration.Evidence.Candidate;
import faintwind.calibration.fit.numerics.Minimum;
import faintwind.calibration.fit.setup.Setting;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.fit.solving.LeftOutRuns;
import faintwind.calibration.fit.solving.ResidualReport;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.run.RunSet;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Chooses among the models by Akaike's criterion with the correction for few readings (Hurvich and
 * Tsai 1989), counting effective readings because residuals are correlated, and by leaving one run
 * out. The physics-shaped model is the default: another must be clearly better by both.
 */
public final class ModelChoice {
  /** By how much a criterion must be lower before the default is left: strong evidence. */
  public static final double CLEARLY = 10;

  /** Share of its left-out error below which a model foretells the runs better than another. */
  public static final double BETTER_FORETOLD = 0.8;

  private static final List<String> OTHERS = List.of("mixed-linear", "mixed", "king", "king-half");

  private ModelChoice() {}

  /**
   * The chosen model with its runners-up, or every reason why these runs cannot carry one.
   *
   * @param set the runs
   * @param cancelled asked at every step
   */
  public static Checked<Choice> choose(RunSet set, BooleanSupplier cancelled) {
    Checked<FitResult> physical = PhysicalFit.of(set, cancelled);
    if (!(physical instanceof Checked.Ok<FitResult> ok)) {
      return Checked.refused(physical.problems());
    }
    FitResult usual = ok.value();
    Setting setting = usual.setting();
    List<FitResult> fits = new ArrayList<>();
    fits.add(usual);
    for (String model : OTHERS) {
      other(usual, setting.model(model), cancelled).ifPresent(fits::add);
    }
    // no other form may swallow what bends this one
    FitResult chosen = PhysicsGate.unlikeABall(usual).isPresent() ? usual : best(fits);
    List<Problem> contradictions = UnusableFit.of(chosen, set);
    if (!contradictions.isEmpty()) {
      return Checked.refused(contradictions);
    }
    List<Candidate> candidates = new ArrayList<>();
    for (FitResult fit : fits) {
      candidates.add(
          new Candidate(
              fit.model(), aicc(fit), LeftOutRuns.rms(LeftOutRuns.of(fit)), fit == chosen));
    }
    candidates.sort(Comparator.comparingDouble(Candidate::aicc));
    return Checked.ok(new Choice(chosen, LeftOutRuns.of(chosen), candidates));
  }

  /** The same runs by another model; nothing where it cannot follow them. */
  private static Optional<FitResult> other(
      FitResult usual, ResponseModel model, BooleanSupplier cancelled) {
    try {
      return Optional.of(FitToRuns.rival(usual, model, cancelled));
    } catch (Minimum.NoneFound none) {
      return Optional.empty();
    }
  }

  private static FitResult best(List<FitResult> fits) {
    FitResult chosen = fits.get(0);
    for (FitResult fit : fits) {
      boolean likelier = aicc(fit) < aicc(chosen) - CLEARLY;
      boolean foretells =
          LeftOutRuns.rms(LeftOutRuns.of(fit))
              < BETTER_FORETOLD * LeftOutRuns.rms(LeftOutRuns.of(chosen));
      if (likelier && foretells) {
        chosen = fit;
      }
    }
    return chosen;
  }

  /**
   * Deviance + 2k + 2k(k+1)/(n − k − 1), with n the effective readings and k the parameters that
   * the runs, not their priors, determine: the sum of 1 − posterior variance over prior variance.
   */
  static double aicc(FitResult fit) {
    double[][] unit = fit.solution().optimum().unitCovariance();
    double k = 0;
    for (int i = 0; i < fit.setup().layout().formula(); i++) {
      k += Math.max(0, 1 - unit[i][i]);
    }
    double n = Math.max(2 * k + 2, ResidualReport.of(fit).effectiveReadings());
    return fit.deviance() + 2 * k + 2 * k * (k + 1) / (n - k - 1);
  }
}
