package faintwind.calibration.fit.judging;

import faintwind.calibration.Evidence.Candidate;
import faintwind.calibration.Evidence.LeftOut;
import faintwind.calibration.fit.numerics.Setting;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
    List<Problem> refusals = new ArrayList<>(DataCheck.refusals(set));
    if (refusals.isEmpty()) {
      refusals.addAll(SignalCheck.refusals(set));
    }
    if (!refusals.isEmpty()) {
      return Checked.refused(refusals);
    }
    Setting setting = Setting.of(set);
    List<FitResult> fits = new ArrayList<>();
    FitResult usual = FitToRuns.fit(setting, setting.model(PhysicsShaped.ID), cancelled);
    fits.add(usual);
    for (String model : OTHERS) {
      fits.add(
          FitToRuns.fitFromExpected(
              setting, setting.model(model), usual.setup().freed(), cancelled));
    }
    FitResult chosen = best(fits);
    List<Problem> contradictions = Contradictions.of(chosen, set);
    if (!contradictions.isEmpty()) {
      return Checked.refused(contradictions);
    }
    List<Candidate> candidates = new ArrayList<>();
    for (FitResult fit : fits) {
      candidates.add(
          new Candidate(fit.model(), aicc(fit), foretold_rms(leftOut(fit)), fit == chosen));
    }
    candidates.sort(Comparator.comparingDouble(Candidate::aicc));
    return Checked.ok(new Choice(chosen, leftOut(chosen), candidates));
  }

  private static FitResult best(List<FitResult> fits) {
    FitResult chosen = fits.get(0);
    for (FitResult fit : fits) {
      boolean likelier = aicc(fit) < aicc(chosen) - CLEARLY;
      boolean foretells =
          foretold_rms(leftOut(fit)) < BETTER_FORETOLD * foretold_rms(leftOut(chosen));
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

  /**
   * Each moved run's speed as the formula of the others reads it. The run's own speed enters the
   * fit as one prior, so leaving it out is a deletion in closed form: with estimate e, variance v
   * and prior variance s², it is e/(1 − v/s²) with variance 1/(1/v − 1/s²).
   */
  static List<LeftOut> leftOut(FitResult fit) {
    List<LeftOut> found = new ArrayList<>();
    double[] values = fit.values();
    double[][] covariance = fit.covariance();
    for (Run run : fit.setting().heated()) {
      Integer column = fit.setup().speedColumns().get(run.name());
      if (column == null) {
        continue;
      }
      double spread = fit.setup().unknowns().get(column).spread();
      double variance = covariance[column][column];
      double known = 1 - variance / (spread * spread);
      if (known < 0.02) {
        continue;
      }
      double usual = Math.hypot(fit.setup().statedSpread(run.name()), fit.runScatter());
      double speed = RunOutcomes.airSpeed_m_s(fit, run);
      double u = Math.sqrt(variance / known + usual * usual);
      found.add(new LeftOut(run.name(), speed, speed * (1 + values[column] / known), speed * u));
    }
    return found;
  }

  static double foretold_rms(List<LeftOut> runs) {
    return Math.sqrt(
        runs.stream()
            .mapToDouble(r -> Math.pow(r.foretold_m_s() / r.speed_m_s() - 1, 2))
            .average()
            .orElse(0));
  }
}
