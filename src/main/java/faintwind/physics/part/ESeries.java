package faintwind.physics.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Preferred numbers for resistors (IEC 60063:2015). E6, E12 and E24 are lists (E24 departs from the
 * rounded powers at 2.7–4.7 and 8.2); E48 and E96 are the rounded powers 10^(i/48) and 10^(i/96).
 */
public enum ESeries {
  E6(6, 0.20),
  E12(12, 0.10),
  E24(24, 0.05),
  E48(48, 0.02),
  E96(96, 0.01);

  private static final List<Double> E24_VALUES =
      List.of(
          1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1,
          5.6, 6.2, 6.8, 7.5, 8.2, 9.1);

  private final int size;
  private final double tolerance;

  ESeries(int size, double tolerance) {
    this.size = size;
    this.tolerance = tolerance;
  }

  /** The names of all. */
  public static List<String> names() {
    return Arrays.stream(values()).map(Enum::name).toList();
  }

  /** Tolerance that the series was made for, as a share. */
  public double tolerance() {
    return tolerance;
  }

  /** The values of one decade, 1 to 10. */
  public List<Double> decade() {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      values.add(
          size <= 24
              ? E24_VALUES.get(i * (24 / size))
              : Math.round(100 * Math.pow(10, i / (double) size)) / 100.0);
    }
    return values;
  }

  /** The value nearest in ratio to a wanted one, Ω. */
  public double nearest_ohm(double wanted_ohm) {
    return around(wanted_ohm).stream()
        .min(Comparator.comparingDouble(v -> Math.abs(Math.log(v / wanted_ohm))))
        .orElseThrow();
  }

  /** The smallest value not below a wanted one, Ω. */
  public double atLeast_ohm(double wanted_ohm) {
    return around(wanted_ohm).stream()
        .filter(v -> v >= wanted_ohm * (1 - 1e-9))
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** Whether a value is one of the series. */
  public boolean has(double ohm) {
    return Math.abs(nearest_ohm(ohm) / ohm - 1) < 1e-6;
  }

  private List<Double> around(double wanted_ohm) {
    if (!(wanted_ohm > 0)) {
      throw new IllegalArgumentException("wanted_ohm = " + wanted_ohm + ", above 0");
    }
    int power = (int) Math.floor(Math.log10(wanted_ohm));
    List<Double> values = new ArrayList<>();
    for (int p = power - 1; p <= power + 1; p++) {
      for (double v : decade()) {
        values.add(tidy(v, p));
      }
    }
    return values;
  }

  // 4.7·10² in binary is 470.00000000000006: the decimal digits are meant
  private static double tidy(double v, int power) {
    return new BigDecimal(Double.toString(v)).scaleByPowerOfTen(power).doubleValue();
  }
}
