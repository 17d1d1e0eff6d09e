package faintwind.calibration.fit.judging;

import faintwind.calibration.CoverageFactor;
import faintwind.calibration.Performance;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.StillDraught;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What a fitted instrument can do in use: uncertainty, smallest speed, response. */
public final class Verdict {
  /** Speeds of the table, m/s. */
  static final List<Double> SPEEDS =
      List.of(0.03, 0.05, 0.07, 0.1, 0.15, 0.2, 0.3, 0.5, 0.7, 1.0, 1.5, 2.0, 3.0, 4.0, 5.0);

  private static final double NORMAL = CoverageFactor.of(Double.POSITIVE_INFINITY);
  private static final double RISE_10_90 = Math.log(9);

  private Verdict() {}

  /** The performance of a fit. */
  public static Performance of(FitResult fit) {
    Formula formula = fit.formula();
    AirPoint air = AirPoint.of(fit.setting().referenceAir());
    OptionalDouble supply = fit.signal().supply_V();
    double stillDelta = formula.steadyDelta_K(0, supply, air);
    List<AtSpeed> table = new ArrayList<>();
    Budget budget = new Budget(fit);
    for (double speed : SPEEDS) {
      table.add(
          new AtSpeed(speed, u95_m_s(fit, speed), rise_s(formula, speed, air), budget.at(speed)));
    }
    return new Performance(
        floor_m_s(fit),
        formula.path().curve().signal(stillDelta, air.air_K()),
        fit.setting().noise(),
        fit.setting().files().get(0).step_s(),
        fit.runScatter(),
        table);
  }

  /** Expanded uncertainty of a speed read at rest, by the covariance of the fit, m/s. */
  public static double u95_m_s(FitResult fit, double speed_m_s) {
    double u = u_m_s(fit, speed_m_s);
    double freedom = fit.runFreedom();
    double runs = new Budget(fit).of("budget.runs", speed_m_s);
    return u * factor(u, runs, freedom);
  }

  /** Standard uncertainty of a speed read at rest, by the covariance of the fit, m/s. */
  static double u_m_s(FitResult fit, double speed_m_s) {
    return fit.formula()
        .u_steady_m_s(
            speed_m_s,
            fit.signal().supply_V(),
            fit.setting().referenceAir(),
            fit.formulaFit().covariance());
  }

  /**
   * Coverage factor of a speed: the scatter between the runs is estimated from few of them, all
   * else counts as known (Welch and Satterthwaite, JCGM 100:2008, G.4).
   */
  private static double factor(double u, double runs, double freedom) {
    if (!(runs > 0) || !Double.isFinite(u * u)) {
      return NORMAL;
    }
    double scattered = Math.min(u, runs);
    double rest = Math.sqrt(u * u - scattered * scattered);
    return CoverageFactor.of(
        CoverageFactor.effectiveFreedom(
            new double[] {scattered, rest}, new double[] {freedom, Double.POSITIVE_INFINITY}));
  }

  /** Time from 10 to 90 % of a small change of the signal: ln 9 over the ball's own rate. */
  static double rise_s(Formula formula, double speed_m_s, AirPoint air) {
    double delta = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), air);
    double[] loss = formula.lossAndSlopes(speed_m_s, delta, air);
    return RISE_10_90 / (loss[0] + loss[2] * delta);
  }

  /**
   * The smallest speed whose expanded uncertainty is at most half of it, with what a field log
   * adds: draught and noise over half a minute, and what the loss of still air may have changed by
   * since the calibration. The half is this program's choice. No speed is the least by decree.
   */
  static double floor_m_s(FitResult fit) {
    Formula formula = fit.formula();
    AirPoint air = AirPoint.of(fit.setting().referenceAir());
    OptionalDouble supply = fit.signal().supply_V();
    double draught_m_s = fit.draught_m_s();
    for (double speed = OwnChoices.LOWEST_FLOOR_M_S;
        speed < OwnChoices.HIGHEST_FLOOR_M_S;
        speed *= 1.02) {
      double delta = formula.steadyDelta_K(speed, supply, air);
      double loss = formula.loss_1_s(speed, delta, air);
      double still = Formula.U_STILL_SINCE * formula.loss_1_s(0, delta, air) / loss;
      double field = NORMAL * Math.hypot(randomLoss(fit, formula), still);
      double up = formula.speed_m_s(loss * Math.exp(field), delta, air) - speed;
      double down = speed - formula.speed_m_s(loss * Math.exp(-field), delta, air);
      double blown = StillDraught.u95_m_s(speed, draught_m_s);
      double known = Math.hypot(u95_m_s(fit, speed), blown);
      if (Math.hypot(Math.max(up, down), known) <= OwnChoices.SHARE_AT_FLOOR * speed) {
        return speed;
      }
    }
    return OwnChoices.HIGHEST_FLOOR_M_S;
  }

  /** Relative standard deviation of a loss averaged over half a minute. */
  private static double randomLoss(FitResult fit, Formula formula) {
    double draught = fit.solution().wander().rest_s() / OwnChoices.AVERAGE_S;
    double step = fit.setting().files().get(0).step_s();
    double rows = Math.max(2, OwnChoices.AVERAGE_S / step);
    double noise_K = fit.setting().noise() / Math.abs(fit.signal().perKelvin());
    double slope = noise_K * Math.sqrt(12 / rows) / Math.max(OwnChoices.AVERAGE_S, 2 * step);
    double byNoise = slope / formula.path().heating_K_s();
    return Math.sqrt(draught + byNoise * byNoise);
  }
}
