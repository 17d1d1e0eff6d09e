package faintwind.calibration.speed.state;

/** Where ball, resistor and bead are believed to be. For one thread. */
final class HeatMean {
  /** Difference, K. */
  double delta_K;

  /** Heat flow out of the resistor, as a heating rate. */
  double flow_K_s;

  /** Difference as the bead has it, K. */
  double bead_K;

  /** Loss over that of still air. */
  double ratio;

  void copyFrom(HeatMean other) {
    delta_K = other.delta_K;
    flow_K_s = other.flow_K_s;
    bead_K = other.bead_K;
    ratio = other.ratio;
  }
}
