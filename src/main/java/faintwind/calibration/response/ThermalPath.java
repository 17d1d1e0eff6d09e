package faintwind.calibration.response;

import java.util.List;

/**
 * Everything between the heater's power and the signal besides the loss: heating rate, the
 * resistor's own heat node, the bead's lag, the thermocouple's curvature, the chain's offset, and
 * the inequality of the balls.
 *
 * <p>With the heat capacity of ball and resistor together as unit, E the reference ball's
 * temperature over the air's:<br>
 * (1 − share) d(Δ + E)/dt = q − loss(Δ + E) · (Δ + E) without the air's own change,<br>
 * dE/dt = −(1 + mismatch) · loss(E) · E − dTair/dt,<br>
 * dq/dt = (p − q)/time − share/time · dΔ/dt, p = heating · (supply/nominal)²,<br>
 * d(bead)/dt = (Δ − bead)/bead time; the signal is that of the bead.<br>
 * Two lumped bodies and a lag: common practice, no source.
 *
 * @param heating_K_s heating rate p at the nominal supply, K/s
 * @param heaterShare share of the resistor in the heat capacity
 * @param heaterTime_s time constant of the resistor against the ball, s
 * @param beadTime_s lag of the thermocouple's bead, s
 * @param offset signal at no difference, signal unit
 * @param mismatch relative excess of the reference ball's loss over what the formula gives a ball
 *     without heater (it has fewer leads)
 * @param curve from difference to signal
 */
public record ThermalPath(
    double heating_K_s,
    double heaterShare,
    double heaterTime_s,
    double beadTime_s,
    double offset,
    double mismatch,
    ThermocoupleCurve curve) {

  public static final int HEATING = 0;
  public static final int SHARE = 1;
  public static final int HEATER_TIME = 2;
  public static final int BEAD_TIME = 3;
  public static final int OFFSET = 4;
  public static final int MISMATCH = 5;
  public static final int SLOPE = 6;

  /**
   * The parameters in the order of the calibration file, with their weak priors. A quarter-watt
   * resistor's body holds 0.05 to 0.15 J/K, a ball of the usual size 2.5 to 4, and a film of epoxy
   * passes 0.01 to 0.1 W/K between them: share and time of the heater follow (own estimate from
   * size and thickness).
   */
  public static List<ParameterPrior> quantities(String signalUnit) {
    return List.of(
        new ParameterPrior("heating", "K/s", true, 0.07, 1.0),
        new ParameterPrior("heater_share", "1", true, 0.03, 0.5),
        new ParameterPrior("heater_time", "s", true, 4, 0.8),
        new ParameterPrior("bead_time", "s", true, 3, 0.7),
        new ParameterPrior("offset", signalUnit, false, 0, 1),
        new ParameterPrior("mismatch", "1", false, -0.05, 0.1),
        new ParameterPrior("sensitivity_slope", "1/K", false, 0.0012, 0.0006));
  }

  /** The path of parameter values in that order. */
  public static ThermalPath of(double[] values, double perKelvin, double reference_K, double bend) {
    return new ThermalPath(
        values[HEATING],
        values[SHARE],
        values[HEATER_TIME],
        values[BEAD_TIME],
        values[OFFSET],
        values[MISMATCH],
        new ThermocoupleCurve(perKelvin, reference_K, values[SLOPE], bend));
  }
}
