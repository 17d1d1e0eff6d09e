package faintwind.calibration.virtual;

import faintwind.physics.AirState;
import java.util.Arrays;

/**
 * Temperatures of resistor, both balls and both junctions, integrated by the classical fourth-order
 * Runge–Kutta rule (Kutta 1901) in steps of at most {@link #MAX_STEP_S}. Mutable; for one thread.
 */
final class VirtualHeat {
  static final double MAX_STEP_S = 0.5;
  private static final int RESISTOR = 0;
  private static final int HEATED = 1;
  private static final int REFERENCE = 2;
  private static final int WARM_JUNCTION = 3;
  private static final int COOL_JUNCTION = 4;
  private static final int NODES = 5;

  private final VirtualBuild build;
  private final double[] state_K = new double[NODES];
  private double supplied_J;
  private double lost_J;

  VirtualHeat(VirtualBuild build) {
    this.build = build;
    Arrays.fill(state_K, build.room().air().temperature_K());
  }

  double warmJunction_K() {
    return state_K[WARM_JUNCTION];
  }

  double coolJunction_K() {
    return state_K[COOL_JUNCTION];
  }

  /** Heat put in by the supply since the start, J. */
  double supplied_J() {
    return supplied_J;
  }

  /** Heat given to the room by both balls since the start, J. */
  double lost_J() {
    return lost_J;
  }

  /** Heat held above a temperature by resistor and balls, J. */
  double held_J(double above_K) {
    return build.heater().node_J_K() * (state_K[RESISTOR] - above_K)
        + build.heated().capacity_J_K() * (state_K[HEATED] - above_K)
        + build.reference().capacity_J_K() * (state_K[REFERENCE] - above_K);
  }

  void step(double step_s, AirState air, double speed_m_s, double power_W) {
    double[] k1 = slopes(state_K, air, speed_m_s, power_W);
    double[] k2 = slopes(moved(k1, step_s / 2), air, speed_m_s, power_W);
    double[] k3 = slopes(moved(k2, step_s / 2), air, speed_m_s, power_W);
    double[] k4 = slopes(moved(k3, step_s), air, speed_m_s, power_W);
    double lossBefore_W = loss_W(air, speed_m_s);
    for (int i = 0; i < NODES; i++) {
      state_K[i] += step_s / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
    }
    supplied_J += power_W * step_s;
    lost_J += (lossBefore_W + loss_W(air, speed_m_s)) / 2 * step_s;
  }

  /** The steady state, by bisection on the heated ball's own balance. */
  void settle(AirState air, double speed_m_s, double power_W) {
    double low_K = air.temperature_K();
    double high_K = low_K + 100;
    for (int i = 0; i < 60; i++) {
      double middle_K = (low_K + high_K) / 2;
      if (build.heated().loss_W(middle_K, air, speed_m_s) < power_W) {
        low_K = middle_K;
      } else {
        high_K = middle_K;
      }
    }
    state_K[HEATED] = low_K;
    state_K[WARM_JUNCTION] = low_K;
    state_K[RESISTOR] = low_K + power_W / build.heater().link_W_K();
    state_K[REFERENCE] = air.temperature_K();
    state_K[COOL_JUNCTION] = air.temperature_K();
  }

  private double loss_W(AirState air, double speed_m_s) {
    return build.heated().loss_W(state_K[HEATED], air, speed_m_s)
        + build.reference().loss_W(state_K[REFERENCE], air, speed_m_s);
  }

  private double[] moved(double[] slopes_K_s, double step_s) {
    double[] result = state_K.clone();
    for (int i = 0; i < NODES; i++) {
      result[i] += step_s * slopes_K_s[i];
    }
    return result;
  }

  private double[] slopes(double[] t_K, AirState air, double speed_m_s, double power_W) {
    VirtualHeater heater = build.heater();
    double through_W = heater.link_W_K() * (t_K[RESISTOR] - t_K[HEATED]);
    double heatedLoss_W = build.heated().loss_W(t_K[HEATED], air, speed_m_s);
    double referenceLoss_W = build.reference().loss_W(t_K[REFERENCE], air, speed_m_s);
    double bead_s = build.chain().bead_s();
    return new double[] {
      (power_W - through_W) / heater.node_J_K(),
      (through_W - heatedLoss_W) / build.heated().capacity_J_K(),
      -referenceLoss_W / build.reference().capacity_J_K(),
      (t_K[HEATED] - t_K[WARM_JUNCTION]) / bead_s,
      (t_K[REFERENCE] - t_K[COOL_JUNCTION]) / bead_s
    };
  }
}
