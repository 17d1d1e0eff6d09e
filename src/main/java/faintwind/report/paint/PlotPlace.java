package faintwind.report.paint;

/**
 * Turns numbers of one axis into places on the picture.
 *
 * @param low number at {@code start}
 * @param high number at {@code end}
 * @param start place of {@code low}, pixels
 * @param end place of {@code high}, pixels
 * @param logarithmic by decades
 */
record PlotPlace(double low, double high, double start, double end, boolean logarithmic) {
  PlotPlace {
    if (!(high > low) || (logarithmic && !(low > 0))) {
      throw new IllegalArgumentException("axis from " + low + " to " + high);
    }
  }

  double of(double value) {
    double share =
        logarithmic
            ? Math.log(Math.max(value, low * 1e-6) / low) / Math.log(high / low)
            : (value - low) / (high - low);
    return start + share * (end - start);
  }

  /** The nearest number inside the axis. */
  double clamp(double value) {
    return Math.max(low, Math.min(high, value));
  }

  boolean holds(double value) {
    return value >= low && value <= high;
  }
}
