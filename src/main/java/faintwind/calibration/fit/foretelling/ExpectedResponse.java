package faintwind.calibration.fit.foretelling;

/**
 * What is expected of an instrument before its runs.
 *
 * @param still_s time constant in still air, s
 * @param breeze_s time constant at 1 m/s, s
 * @param still_K difference in still air, K
 * @param noise_K standard deviation of one row, K
 */
public record ExpectedResponse(double still_s, double breeze_s, double still_K, double noise_K) {}
