package faintwind.physics.design;

import faintwind.physics.Constants;
import faintwind.physics.part.ResistorStyle;

/**
 * The heater's resistor at the temperature that it has inside the ball: R = R20·[1 + α·(T − 20 °C)]
 * (definition of the temperature coefficient, IEC 60115-1), T = ball + P·epoxy, P = V²·R/(R +
 * cable)² (Ohm, Joule). Good as long as the coefficient is constant: film resistors, −55 to 155 °C.
 *
 * @param at20_ohm resistance at 20 °C, Ω
 * @param tempco_1_K temperature coefficient α, 1/K
 * @param supply_V voltage at the supply, V
 * @param cable_ohm resistance of the cable, there and back, Ω
 * @param epoxy_K_W rise of the body above the ball for each watt, K/W
 */
record HotResistor(
    double at20_ohm, double tempco_1_K, double supply_V, double cable_ohm, double epoxy_K_W) {
  private static final double REFERENCE_K = Constants.ZERO_C_K + 20;
  private static final double FILLED_EPOXY_W_MK = 0.7; // lower edge of 0.7–1.5, from memory

  /** Body, power and resistance depend on one another by parts in a thousand: five rounds do. */
  private static final int ROUNDS = 5;

  /**
   * Rise of a resistor's body above the ball around it, K/W: ln(hole/body)/(2·π·k·length), epoxy
   * between two cylinders (Incropera, radial conduction).
   */
  static double epoxy_K_W(Design design) {
    ResistorStyle.Body body = design.heater().style().body();
    double gap = Math.max(1.02, design.ball().bore().diameter_m() / body.diameter_m().nominal());
    return Math.log(gap) / (2 * Math.PI * FILLED_EPOXY_W_MK * body.length_m());
  }

  /** Resistance of a body at a temperature, Ω. */
  double resistance_ohm(double body_K) {
    return at20_ohm * (1 + tempco_1_K * (body_K - REFERENCE_K));
  }

  /** Power, W, where the ball has a temperature, K. */
  double power_W(double ball_K) {
    double power = 0;
    for (int i = 0; i < ROUNDS; i++) {
      double r = resistance_ohm(ball_K + power * epoxy_K_W);
      double current = supply_V / (r + cable_ohm);
      power = current * current * r;
    }
    return power;
  }

  /** Temperature of the body, K, where the ball has a temperature, K. */
  double body_K(double ball_K) {
    return ball_K + power_W(ball_K) * epoxy_K_W;
  }
}
