package faintwind.calibration.fit.judging;

import faintwind.calibration.Evidence.MonteCarloSummary;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Uncertainty by Monte Carlo (JCGM 101:2008), by refitting: see {@link Refits}. Draws from the
 * covariance of a fit are not made: the parameters multiply one another and are strongly
 * correlated, so that such draws spread far wider than the fit does (docs/decisions/0006).
 */
public final class MonteCarlo {
  private static final List<Double> COMPARED = List.of(0.1, 0.2, 0.3, 0.5, 1.0, 2.0, 3.0);

  private MonteCarlo() {}

  /** Seed of one refit, so that refits can be shared out among threads in any order. */
  public static long seedOf(long seed, int refit) {
    return new SplittableRandom(seed + 0x9E3779B97F4A7C15L * (refit + 1L)).nextLong();
  }

  /** What the refits say beside the covariance. */
  public static MonteCarloSummary summary(
      FitResult fit, List<double[]> draws, int failed, long seed) {
    double[] ratios =
        COMPARED.stream().mapToDouble(u -> u_m_s(fit, draws, u) / Verdict.u_m_s(fit, u)).toArray();
    return new MonteCarloSummary(draws.size(), failed, seed, new Median().evaluate(ratios));
  }

  /**
   * Standard uncertainty of a speed read at rest by the draws: the scatter of the speeds that the
   * drawn formulas read from the signal of the fitted one.
   */
  public static double u_m_s(FitResult fit, List<double[]> draws, double speed_m_s) {
    return Math.sqrt(StatUtils.variance(speeds(fit, draws, speed_m_s)));
  }

  /** Standard uncertainty of a speed by the fit's own covariance. */
  public static double byCovariance_m_s(FitResult fit, double speed_m_s) {
    return Verdict.u_m_s(fit, speed_m_s);
  }

  /** The speed that one drawn formula reads from the fitted one's signal of a speed. */
  public static double speed_m_s(FitResult fit, double[] drawn, double speed_m_s) {
    return speeds(fit, List.of(drawn), speed_m_s)[0];
  }

  private static double[] speeds(FitResult fit, List<double[]> draws, double speed_m_s) {
    FormulaFit base = fit.formulaFit();
    AirPoint air = AirPoint.of(fit.setting().referenceAir());
    OptionalDouble supply = fit.signal().supply_V();
    Formula formula = Formula.of(base, fit.signal());
    double signal = formula.signal(formula.steadyDelta_K(speed_m_s, supply, air), air.air_K());
    return draws.stream()
        .mapToDouble(
            values -> Formula.of(base, fit.signal(), values).steadySpeed_m_s(signal, supply, air))
        .toArray();
  }
}
