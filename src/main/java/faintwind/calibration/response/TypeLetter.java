package faintwind.calibration.response;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Sensitivity of the letter-designated thermocouples near room temperature: S(T) = s25 (1 + slope
 * (T − 25 °C) + bend (T − 25 °C)²), fitted to the ITS-90 functions (NIST Monograph 175) between 0
 * and 60 °C within 0.2 %.
 */
public enum TypeLetter {
  K(40.5206, 8.885e-04, -7.04e-06),
  T(40.6905, 2.019e-03, 2.62e-06),
  J(51.7511, 9.518e-04, -4.14e-06),
  E(60.9543, 1.503e-03, -2.09e-07),
  N(26.7842, 1.342e-03, 2.18e-06),
  S(5.9909, 3.670e-03, -9.87e-06),
  R(5.9425, 4.133e-03, -1.01e-05);

  private final double s25;
  private final double slope;
  private final double bend;

  TypeLetter(double s25, double slope, double bend) {
    this.s25 = s25;
    this.slope = slope;
    this.bend = bend;
  }

  /** The letter, or nothing where it is not among these. */
  public static Optional<TypeLetter> of(String letter) {
    for (TypeLetter type : values()) {
      if (type.name().equals(letter.strip().toUpperCase(Locale.ROOT))) {
        return Optional.of(type);
      }
    }
    return Optional.empty();
  }

  /** The letters there are, for a message. */
  public static String known() {
    return Arrays.stream(values()).map(Enum::name).sorted().collect(Collectors.joining(", "));
  }

  /** Sensitivity, V/K. */
  public double sensitivity_V_K(double temperature_K) {
    double d = temperature_K - 298.15;
    return 1e-6 * s25 * (1 + d * (slope + d * bend));
  }

  /** Relative rise of the sensitivity per kelvin at a temperature. */
  public double slopeAt(double temperature_K) {
    double d = temperature_K - 298.15;
    return (slope + 2 * bend * d) / (1 + d * (slope + d * bend));
  }

  /** Relative second-order coefficient at a temperature, 1/K². */
  public double bendAt(double temperature_K) {
    double d = temperature_K - 298.15;
    return bend / (1 + d * (slope + d * bend));
  }
}
