package faintwind.calibration.virtual;

import faintwind.physics.AirState;

/**
 * One made-up ball.
 *
 * @param diameter_m diameter, m
 * @param capacity_J_K heat capacity with all that is glued into it, J/K
 * @param emissivity of its coat, 0 to 1
 * @param leads_W_K conductance of its leads to the room, W/K
 * @param convection how air cools it
 */
public record VirtualBall(
    double diameter_m,
    double capacity_J_K,
    double emissivity,
    double leads_W_K,
    VirtualConvection convection) {
  private static final double STEFAN_BOLTZMANN_W_M2K4 = 5.670374419e-8;

  /** The same ball with so many times its heat capacity: it settles so many times as slowly. */
  public VirtualBall slower(double times) {
    return new VirtualBall(diameter_m, times * capacity_J_K, emissivity, leads_W_K, convection);
  }

  /** Heat given off at a temperature of the ball in air of a state and speed, W. */
  double loss_W(double ball_K, AirState air, double speed_m_s) {
    double area_m2 = Math.PI * diameter_m * diameter_m;
    double difference_K = ball_K - air.temperature_K();
    double coefficient = convection.coefficient_W_m2K(diameter_m, ball_K, air, speed_m_s);
    double radiation =
        emissivity
            * STEFAN_BOLTZMANN_W_M2K4
            * (Math.pow(ball_K, 4) - Math.pow(air.temperature_K(), 4));
    return area_m2 * (coefficient * difference_K + radiation) + leads_W_K * difference_K;
  }
}
