package faintwind.report.figure;

import faintwind.calibration.Calibration;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.report.plot.PlotPoints;
import java.util.List;
import java.util.OptionalDouble;

/** The loss of a calibration at rest, per 1000 s, against speed, in its own air state. */
final class LossCurve {
  private static final int STEPS = 160;
  private static final double PER_KS = 1000;

  private final Formula formula;
  private final AirPoint air;
  private final List<AtSpeed> speeds;
  private final double highest_m_s;

  private LossCurve(Calibration calibration) {
    this.formula = Formula.of(calibration);
    this.air = AirPoint.of(calibration.formula().referenceAir());
    this.speeds = calibration.performance().speeds();
    this.highest_m_s = calibration.coverage().highest_m_s();
  }

  static LossCurve of(Calibration calibration) {
    return new LossCurve(calibration);
  }

  /** Loss at rest at a speed, per 1000 s. */
  double lossOf(double speed_m_s) {
    double speed = Math.max(0, speed_m_s);
    double delta = formula.steadyDelta_K(speed, OptionalDouble.empty(), air);
    return PER_KS * formula.loss_1_s(speed, delta, air);
  }

  double stillLoss_per_ks() {
    return lossOf(0);
  }

  /** The curve from 0 to the fastest run, with its band. */
  PlotPoints points() {
    double[] x = new double[STEPS + 1];
    double[] y = new double[STEPS + 1];
    double[] low = new double[STEPS + 1];
    double[] high = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      // closer together near still air, where the curve bends
      double share = (double) i / STEPS;
      x[i] = highest_m_s * share * share;
      double u95 = u95_m_s(x[i]);
      y[i] = lossOf(x[i]);
      low[i] = lossOf(x[i] - u95);
      high[i] = lossOf(x[i] + u95);
    }
    return PlotPoints.withBand(x, y, low, high);
  }

  /** Linear between the lines of the table; beyond its ends the end's. */
  private double u95_m_s(double speed_m_s) {
    if (speeds.isEmpty()) {
      return 0;
    }
    AtSpeed before = speeds.get(0);
    for (AtSpeed next : speeds) {
      if (next.speed_m_s() >= speed_m_s) {
        double gap = next.speed_m_s() - before.speed_m_s();
        double share = gap > 0 ? (speed_m_s - before.speed_m_s()) / gap : 0;
        return before.u95_m_s() + Math.max(0, share) * (next.u95_m_s() - before.u95_m_s());
      }
      before = next;
    }
    return before.u95_m_s();
  }
}
