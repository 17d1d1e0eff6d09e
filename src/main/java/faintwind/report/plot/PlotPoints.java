package faintwind.report.plot;

import java.util.Arrays;

/**
 * One unbroken piece of a series, with or without a band. Owns its arrays; immutable. Numbers are
 * finite: a gap in a record is the space between two pieces.
 */
public final class PlotPoints {
  private final double[] x;
  private final double[] y;
  private final double[] low;
  private final double[] high;

  private PlotPoints(double[] x, double[] y, double[] low, double[] high) {
    this.x = x;
    this.y = y;
    this.low = low;
    this.high = high;
  }

  /** Points without a band. */
  public static PlotPoints of(double[] x, double[] y) {
    return checked(x.clone(), y.clone(), new double[0], new double[0]);
  }

  /** Points with a band from {@code low} to {@code high}. */
  public static PlotPoints withBand(double[] x, double[] y, double[] low, double[] high) {
    if (low.length != x.length || high.length != x.length) {
      throw new IllegalArgumentException(
          "x has " + x.length + " numbers, low " + low.length + ", high " + high.length);
    }
    return checked(x.clone(), y.clone(), low.clone(), high.clone());
  }

  private static PlotPoints checked(double[] x, double[] y, double[] low, double[] high) {
    if (x.length != y.length) {
      throw new IllegalArgumentException("x has " + x.length + " numbers, y has " + y.length);
    }
    for (double[] numbers : new double[][] {x, y, low, high}) {
      if (!Arrays.stream(numbers).allMatch(Double::isFinite)) {
        throw new IllegalArgumentException("a number is not finite");
      }
    }
    return new PlotPoints(x, y, low, high);
  }

  /** Those whose x lies between two numbers; x must rise. */
  public PlotPoints between(double from, double to) {
    int first = 0;
    while (first < size() && x[first] < from) {
      first++;
    }
    int end = first;
    while (end < size() && x[end] <= to) {
      end++;
    }
    return new PlotPoints(
        Arrays.copyOfRange(x, first, end),
        Arrays.copyOfRange(y, first, end),
        hasBand() ? Arrays.copyOfRange(low, first, end) : low,
        hasBand() ? Arrays.copyOfRange(high, first, end) : high);
  }

  public int size() {
    return x.length;
  }

  public boolean isEmpty() {
    return x.length == 0;
  }

  public boolean hasBand() {
    return low.length > 0;
  }

  public double x(int index) {
    return x[index];
  }

  public double y(int index) {
    return y[index];
  }

  /** Lower edge of the band; the value itself where there is no band. */
  public double low(int index) {
    return hasBand() ? low[index] : y[index];
  }

  /** Upper edge of the band; the value itself where there is no band. */
  public double high(int index) {
    return hasBand() ? high[index] : y[index];
  }
}
