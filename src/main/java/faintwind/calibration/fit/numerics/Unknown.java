package faintwind.calibration.fit.numerics;

import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.run.Uncertain;

/**
 * One number that a fit looks for, with its prior. The fit works on a variable x whose prior is a
 * standard normal one; the shape says how the value follows from it.
 *
 * @param name for reports
 * @param mean value before any run
 * @param spread standard deviation of the prior, of the logarithm where the shape is that
 * @param shape how the value follows from x
 */
public record Unknown(String name, double mean, double spread, Shape shape) {

  /**
   * Who states no uncertainty at all holds the unknown fast; a spread of nothing would divide by
   * nothing.
   */
  private static final double LEAST_SPREAD = 1e-6;

  public Unknown {
    spread = Math.max(LEAST_SPREAD, spread);
  }

  /** How the value follows from x. */
  public enum Shape {
    /** mean + spread x. */
    LINEAR,
    /** mean exp(spread x): for what is positive by nature. */
    LOG,
    /**
     * The same as linear well above 0, and a positive number near 0 below it: for what may be
     * nothing but not less.
     */
    SOFT
  }

  public static Unknown of(ParameterPrior quantity) {
    return new Unknown(
        quantity.name(),
        quantity.prior(),
        quantity.spread(),
        quantity.positive() ? Shape.LOG : Shape.LINEAR);
  }

  public static Unknown linear(String name, double mean, double spread) {
    return new Unknown(name, mean, spread, Shape.LINEAR);
  }

  public static Unknown log(String name, double mean, double spread) {
    return new Unknown(name, mean, spread, Shape.LOG);
  }

  public static Unknown soft(String name, double mean, double spread) {
    return new Unknown(name, mean, spread, Shape.SOFT);
  }

  /** The same with another prior, stated where it is normal: of the logarithm for that shape. */
  Unknown expecting(Uncertain normal) {
    double mean = shape == Shape.LOG ? Math.exp(normal.value()) : normal.value();
    return new Unknown(name, mean, normal.u().orElse(spread), shape);
  }

  /** Where the prior is normal: the logarithm for that shape, else the value before it is bent. */
  public double normal(double x) {
    return (shape == Shape.LOG ? Math.log(mean) : mean) + spread * x;
  }

  public double value(double x) {
    return switch (shape) {
      case LINEAR -> mean + spread * x;
      case LOG -> mean * Math.exp(spread * x);
      case SOFT -> width() * softPlus((mean + spread * x) / width());
    };
  }

  /** d value / dx. */
  public double slope(double x) {
    return switch (shape) {
      case LINEAR -> spread;
      case LOG -> spread * value(x);
      case SOFT -> spread / (1 + Math.exp(-(mean + spread * x) / width()));
    };
  }

  /**
   * The x after a step along which the value goes straight, not its logarithm: what recordings say
   * of a positive number is nearly straight in it. Below half of the value the step bends.
   */
  double stepped(double x, double step) {
    if (shape != Shape.LOG) {
      return x + step;
    }
    double change = spread * step;
    double log = change > -0.5 ? Math.log1p(change) : 2 * change + 1 - Math.log(2);
    return x + log / spread;
  }

  public double x(double value) {
    return switch (shape) {
      case LINEAR -> (value - mean) / spread;
      case LOG -> Math.log(value / mean) / spread;
      case SOFT -> (width() * inverseSoftPlus(value / width()) - mean) / spread;
    };
  }

  private double width() {
    return OwnChoices.SOFTNESS * spread;
  }

  private static double softPlus(double z) {
    return z > 40 ? z : Math.log1p(Math.exp(z));
  }

  private static double inverseSoftPlus(double y) {
    return y > 40 ? y : Math.log(Math.expm1(Math.max(y, 1e-12)));
  }
}
