package faintwind.calibration.virtual;

/**
 * The made-up resistor in the heated ball, with a heat node of its own.
 *
 * @param resistance_ohm resistance, Ω
 * @param supply_V supply at the ball when switched on, V
 * @param drift_V_h drift of the supply, V per hour
 * @param node_J_K heat capacity of the resistor's body, J/K
 * @param link_W_K conductance of the glue between resistor and ball, W/K
 */
public record VirtualHeater(
    double resistance_ohm, double supply_V, double drift_V_h, double node_J_K, double link_W_K) {

  double volts(double time_s) {
    return supply_V + drift_V_h * time_s / 3600;
  }

  double power_W(double time_s) {
    double v = volts(time_s);
    return v * v / resistance_ohm;
  }
}
