package faintwind.report.plot;

import java.util.OptionalDouble;

/**
 * One axis.
 *
 * @param name quantity and unit in words, such as "air speed, m/s"; empty for none
 * @param scale how numbers become places
 * @param low lower end; empty: taken from the data
 * @param high upper end; empty: taken from the data
 */
public record PlotAxis(String name, Scale scale, OptionalDouble low, OptionalDouble high) {

  /** How numbers become places and words. */
  public enum Scale {
    LINEAR,
    /** Numbers with their sign, as for errors. */
    SIGNED,
    /** By decades; values must be positive. */
    LOGARITHMIC,
    /** Seconds since midnight, shown as hours and minutes. */
    CLOCK,
    /** Seconds, shown as minutes. */
    MINUTES
  }

  /** Linear, ends from the data. */
  public static PlotAxis linear(String name) {
    return new PlotAxis(name, Scale.LINEAR, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** Linear, starting at zero. */
  public static PlotAxis fromZero(String name) {
    return new PlotAxis(name, Scale.LINEAR, OptionalDouble.of(0), OptionalDouble.empty());
  }

  /** Another scale, ends from the data. */
  public static PlotAxis of(String name, Scale scale) {
    return new PlotAxis(name, scale, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** The same with given ends. */
  public PlotAxis between(double newLow, double newHigh) {
    return new PlotAxis(name, scale, OptionalDouble.of(newLow), OptionalDouble.of(newHigh));
  }
}
