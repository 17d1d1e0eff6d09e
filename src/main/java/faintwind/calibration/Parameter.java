package faintwind.calibration;

/**
 * One fitted number of the formula.
 *
 * @param name its word in the calibration file
 * @param value the estimate
 * @param u standard uncertainty
 * @param unit unit symbol, 1 where it has none
 */
public record Parameter(String name, double value, double u, String unit) {}
