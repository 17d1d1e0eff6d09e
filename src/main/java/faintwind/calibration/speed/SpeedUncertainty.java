package faintwind.calibration.speed;

import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.response.QuickCurve;
import faintwind.calibration.response.StillDraught;
import faintwind.calibration.speed.EstimatedRow.Estimate;
import faintwind.calibration.speed.state.FieldFormula;
import faintwind.calibration.speed.state.PreparedRow;

/**
 * Expanded uncertainty of an averaged speed. All parts are taken to the logarithm of the loss: the
 * calibration's covariance (JCGM 100:2008, equation 13), the estimator's variance less what the
 * averaging takes off it, the air and the supply where they were not recorded, what the loss of
 * still air may have changed by since the calibration ({@link Formula#U_STILL_SINCE}), and what a
 * coarse logger's step hides. Where the speed hardly bends over the band the slope carries them to
 * the speed; near still air the formula itself does, and the wider side counts.
 *
 * <p>A lag of the junction that is off by a time shifts every speed in time: a mean over A changes
 * by that time times the change of the speed over A, divided by A.
 *
 * <p>The draught of the calibration's room adds what {@link StillDraught} says.
 *
 * <p>Where natural convection is not small against forced (Gr/Re² above 0.1) the direction of the
 * flow matters, and 6 % · x/(1 + x) with x = Gr/Re² is added: an assumption of this program, no
 * published figure was found.
 */
final class SpeedUncertainty {
  static final double COVERAGE_FACTOR = 2;

  /** Relative standard uncertainty of the loss of still air in the field. */
  static final double U_STILL = Formula.U_STILL_SINCE;

  static final double GRAVITY_M_S2 = 9.80665;

  private final FieldFormula formula;
  private final QuickCurve falling = new QuickCurve(x -> Math.exp(-x));
  private final double lag_s;

  /** Losses at both ends of the band, then their speeds. */
  private final double[] sides = new double[2];

  SpeedUncertainty(FieldFormula formula) {
    this.formula = formula;
    lag_s = Math.hypot(OwnChoices.U_LAG_S, formula.u_beadTime_s());
  }

  /**
   * An averaged speed's uncertainty and whether it can be told from still air.
   *
   * @param u95_m_s expanded uncertainty
   * @param aboveStill whether still air lies outside the band
   */
  record Band(double u95_m_s, boolean aboveStill) {}

  /**
   * The band of a speed.
   *
   * @param row the row at its middle
   * @param found the speed, averaged or not
   */
  Band band(EstimatedRow row, WeightedSums.Mean found) {
    double speed_m_s = found.speed_m_s();
    double logLoss = found.logLoss();
    Estimate estimate = row.estimate();
    AirPoint air = row.row().air();
    double delta_K = estimate.delta_K();
    double slope_m_s = formula.speedByLogLoss_m_s(speed_m_s, delta_K, air);
    double calibration =
        formula.relativeLossUncertainty(delta_K, air.air_K(), estimate.heatingShare());
    double pressurePart = unknownPressure(row.row().rowAir(), speed_m_s, delta_K);
    double airPart = unknownAir(row.row(), estimate);
    double stillPart = U_STILL * falling.at(Math.max(0, logLoss));
    boolean seen = row.row().supply() != PreparedRow.Supply.NOT_RECORDED;
    double supplyPart = seen ? 0 : OwnChoices.U_HEATING_UNSEEN * estimate.heatingShare();
    double known2 = calibration * calibration + airPart * airPart + supplyPart * supplyPart;
    known2 += pressurePart * pressurePart + estimate.hidden() * estimate.hidden();
    double u = Math.sqrt(known2 + stillPart * stillPart + found.variance());
    double wide = COVERAGE_FACTOR * u;
    boolean aboveStill = logLoss > wide && speed_m_s > formula.stillDraught_m_s();
    double straight_m_s = wide * slope_m_s;
    double side_m_s =
        straight_m_s < OwnChoices.NEARLY_STRAIGHT * speed_m_s
            ? straight_m_s
            : widerSide(speed_m_s, estimate, logLoss, wide, air);
    double direction_m_s = direction(speed_m_s, delta_K, air);
    double late_m_s = COVERAGE_FACTOR * lag_s * Math.abs(found.rate_m_s2());
    double blown_m_s = StillDraught.u95_m_s(speed_m_s, formula.stillDraught_m_s());
    double known2_m_s = side_m_s * side_m_s + direction_m_s * direction_m_s;
    double u95_m_s = Math.sqrt(known2_m_s + late_m_s * late_m_s + blown_m_s * blown_m_s);
    return new Band(u95_m_s, aboveStill);
  }

  /** What a wrong air temperature does to ln(loss read / loss of still air). */
  private double unknownAir(PreparedRow row, Estimate estimate) {
    double u_K = row.rowAir().u_temperature_K();
    if (u_K <= 0) {
      return 0;
    }
    AirPoint warmer = row.air().withTemperature(row.air().air_K() + u_K);
    double delta_K = formula.delta_K(row.signal(), warmer.air_K());
    double before_K = formula.delta_K(row.signal(), row.air().air_K());
    double still_1_s = formula.stillLoss_1_s(estimate.delta_K(), warmer);
    double changed = Math.log(still_1_s / estimate.stillLoss_1_s());
    boolean cold = Math.abs(before_K) < 0.1 || delta_K * before_K <= 0;
    return Math.abs(changed + (cold ? 0 : Math.log(delta_K / before_K)));
  }

  /** What a wrong pressure does to the logarithm of the loss at the speed last asked for. */
  private double unknownPressure(PreparedRow.RowAir air, double speed_m_s, double delta_K) {
    if (air.u_pressure() <= 0) {
      return 0;
    }
    double at_m_s = Math.max(speed_m_s, FieldFormula.LEAST_SPEED_M_S);
    AirPoint thicker = air.point().withPressureTimes(1 + air.u_pressure());
    double as_1_s = formula.lastLoss_1_s();
    return Math.log(formula.loss_1_s(at_m_s, delta_K, thicker) / as_1_s);
  }

  private double widerSide(
      double speed_m_s, Estimate estimate, double logLoss, double wide, AirPoint air) {
    double still_1_s = estimate.stillLoss_1_s();
    double high = still_1_s * Math.exp(Math.max(0, logLoss) + wide);
    double low = still_1_s * Math.exp(logLoss - wide);
    sides[0] = high;
    sides[1] = low;
    formula.speeds_m_s(sides, estimate.delta_K(), air);
    return Math.max(sides[0] - speed_m_s, speed_m_s - sides[1]);
  }

  private double direction(double speed_m_s, double delta_K, AirPoint air) {
    if (speed_m_s <= 0) {
      return 0;
    }
    double film_K = air.air_K() + delta_K / 2;
    double mixed = GRAVITY_M_S2 * delta_K * formula.diameter_m() / (film_K * speed_m_s * speed_m_s);
    return mixed > OwnChoices.MIXED
        ? OwnChoices.DIRECTION_U95 * mixed / (1 + mixed) * speed_m_s
        : 0;
  }
}
