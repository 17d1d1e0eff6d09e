package faintwind.calibration.compare;

import faintwind.calibration.Calibration;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.physics.AirState;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Numbers by which a calibration can be known again, all in one air: logarithms of the heating
 * rate, of the loss of still air and of that at a fast speed, with their covariance from that of
 * the parameters (JCGM 100:2008, 5.2, changes by difference).
 */
final class Traits {
  static final int HEATING = 0;
  static final int STILL_LOSS = 1;
  static final int FAST_LOSS = 2;
  static final int COUNT = 3;

  private final FormulaFit fit;
  private final Calibration calibration;
  private final AirPoint air;
  private final double fast_m_s;
  private final double[] values;

  Traits(Calibration calibration, AirState air, double fast_m_s) {
    this.calibration = calibration;
    this.fit = calibration.formula();
    this.air = AirPoint.of(air);
    this.fast_m_s = fast_m_s;
    this.values = of(Formula.of(calibration));
  }

  private double[] of(Formula formula) {
    return new double[] {
      Math.log(formula.heating_K_s(OptionalDouble.empty())),
      Math.log(formula.loss_1_s(0, OwnChoices.DELTA_K, air)),
      Math.log(formula.loss_1_s(fast_m_s, OwnChoices.DELTA_K, air))
    };
  }

  double value(int trait) {
    return values[trait];
  }

  RealMatrix covariance() {
    int n = fit.parameters().size();
    double[][] slopes = new double[COUNT][n];
    for (int i = 0; i < n; i++) {
      double step = fit.parameters().get(i).u();
      if (!(step > 0)) {
        continue;
      }
      double[] moved = fit.values();
      moved[i] += 0.1 * step;
      double[] there = of(Formula.of(fit, calibration.signal(), moved));
      for (int k = 0; k < COUNT; k++) {
        slopes[k][i] = (there[k] - values[k]) / (0.1 * step);
      }
    }
    RealMatrix jacobian = new Array2DRowRealMatrix(slopes, false);
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        covariance[i][j] = fit.covariance().at(i, j);
      }
    }
    return jacobian
        .multiply(new Array2DRowRealMatrix(covariance, false))
        .multiply(jacobian.transpose());
  }
}
