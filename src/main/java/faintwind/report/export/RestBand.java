package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.StillDraught;
import faintwind.calibration.speed.state.FieldFormula;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Expanded uncertainty of a speed at rest by the calibration, what the still air's loss may have
 * changed by, and the direction of a faint flow; no noise. For exports without a filter.
 */
final class RestBand {
  /**
   * The band at a speed.
   *
   * @param u95_m_s expanded uncertainty, 95 %
   */
  record At(double speed_m_s, double u95_m_s) {}

  private RestBand() {}

  static List<At> of(ExportedFormula exported) {
    Calibration calibration = exported.calibration();
    FieldFormula field = new FieldFormula(calibration);
    Formula formula = Formula.of(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    Map<String, Double> u = exported.complete().uncertainty();
    double gravity = exported.numbers().getOrDefault("gravity", 0.0);
    LossTable table = LossTable.of(calibration);
    List<At> all = new ArrayList<>();
    for (int i = 0; i < table.lnSpeeds().size(); i++) {
      double speed_m_s = Math.exp(table.lnSpeeds().get(i));
      double delta_K = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), air);
      double slope_m_s = field.speedByLogLoss_m_s(speed_m_s, delta_K, air);
      double still = formula.loss_1_s(0, delta_K, air) / formula.loss_1_s(speed_m_s, delta_K, air);
      double part = Math.hypot(table.u_loss().get(i), still * Formula.U_STILL_SINCE);
      double side_m_s = u.getOrDefault("coverage_factor", 2.0) * part * slope_m_s;
      double film_K = air.air_K() + delta_K / 2;
      double mixed = gravity * delta_K * field.diameter_m() / (film_K * speed_m_s * speed_m_s);
      double direction =
          mixed > u.getOrDefault("direction_from", 0.0)
              ? u.getOrDefault("direction_share", 0.0) * mixed / (1 + mixed) * speed_m_s
              : 0;
      double blown_m_s = StillDraught.u95_m_s(speed_m_s, field.stillDraught_m_s());
      all.add(new At(speed_m_s, Math.hypot(Math.hypot(side_m_s, direction), blown_m_s)));
    }
    return all;
  }
}
