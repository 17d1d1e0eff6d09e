package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.speed.state.FieldFormula;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Relative standard uncertainty of the loss by the calibration's covariance, against the speed, at
 * rest in the calibration's air.
 *
 * @param lnSpeeds logarithms of the speeds, rising
 * @param u_loss of the loss there
 */
record LossTable(List<Double> lnSpeeds, List<Double> u_loss) {
  private static final int POINTS = 24;
  private static final double OVER = 2;

  LossTable {
    lnSpeeds = List.copyOf(lnSpeeds);
    u_loss = List.copyOf(u_loss);
  }

  static LossTable of(Calibration calibration) {
    FieldFormula field = new FieldFormula(calibration);
    Formula formula = Formula.of(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double low = Math.log(FieldFormula.LEAST_SPEED_M_S);
    double high = Math.log(OVER * calibration.coverage().highest_m_s());
    List<Double> lnSpeeds = new ArrayList<>();
    List<Double> u_loss = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double lnSpeed = low + (high - low) * i / (POINTS - 1);
      double speed_m_s = Math.exp(lnSpeed);
      double delta_K = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), air);
      field.speedByLogLoss_m_s(speed_m_s, delta_K, air);
      lnSpeeds.add(lnSpeed);
      u_loss.add(field.relativeLossUncertainty(delta_K, air.air_K(), 1));
    }
    return new LossTable(lnSpeeds, u_loss);
  }
}
