package faintwind.calibration.plan;

import faintwind.physics.Interval;

/**
 * How the instrument answers, as far as it is known before the session: from the design's
 * prediction, or from a first calibration.
 *
 * @param still_s time constant in still air, s
 * @param breeze_s time constant at 1 m/s, s
 * @param still_K difference in still air, K
 * @param noise_K standard deviation of one row, K
 * @param step_s time between rows, s
 */
public record Response(
    Interval still_s, Interval breeze_s, double still_K, double noise_K, double step_s) {
  public Response {
    if (!(breeze_s.low() > 0)
        || !(breeze_s.nominal() < still_s.nominal())
        || !(still_K > 0)
        || !(noise_K > 0)
        || !(step_s > 0)) {
      throw new IllegalArgumentException(
          "still_s = "
              + still_s
              + ", breeze_s = "
              + breeze_s
              + ", still_K = "
              + still_K
              + ", noise_K = "
              + noise_K
              + ", step_s = "
              + step_s);
    }
  }
}
