package faintwind.calibration.speed;

/** How far something smoothed over a time moves within a step; steps are mostly the same. */
final class Decay {
  private final double time_s;
  private double last_s;
  private double lastShare;

  Decay(double time_s) {
    this.time_s = time_s;
  }

  /** 1 − exp(−step/time). */
  double share(double step_s) {
    if (step_s != last_s) {
      last_s = step_s;
      lastShare = 1 - Math.exp(-step_s / time_s);
    }
    return lastShare;
  }
}
