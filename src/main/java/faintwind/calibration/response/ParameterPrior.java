package faintwind.calibration.response;

/**
 * What a parameter of a formula is, and what is known of it before any run: a weak prior.
 *
 * @param name its word in the calibration file
 * @param unit unit symbol, 1 where it has none
 * @param positive whether it is positive by nature; it is then fitted through its logarithm, and
 *     {@code spread} is that of the logarithm
 * @param prior value expected before any run
 * @param spread standard deviation of the prior
 */
public record ParameterPrior(
    String name, String unit, boolean positive, double prior, double spread) {}
