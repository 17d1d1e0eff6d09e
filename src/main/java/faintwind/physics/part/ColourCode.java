package faintwind.physics.part;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Colour bands of a resistor (IEC 60062): two or three digits, a multiplier, a tolerance. Tolerance
 * bands orange, yellow and grey are left out: tables disagree about them.
 */
public final class ColourCode {
  private ColourCode() {}

  /** A colour of the code. */
  public enum Colour {
    BLACK(0, 0),
    BROWN(1, 0.01),
    RED(2, 0.02),
    ORANGE(3, 0),
    YELLOW(4, 0),
    GREEN(5, 0.005),
    BLUE(6, 0.0025),
    VIOLET(7, 0.001),
    GREY(8, 0),
    WHITE(9, 0),
    GOLD(-1, 0.05),
    SILVER(-2, 0.10);

    private final int power;
    private final double tolerance;

    Colour(int power, double tolerance) {
      this.power = power;
      this.tolerance = tolerance;
    }

    /** Tolerance as a share; empty where the colour stands for none, or tables disagree. */
    Optional<Double> tolerance() {
      return tolerance == 0 ? Optional.empty() : Optional.of(tolerance);
    }

    private static Colour of(int power) {
      return Arrays.stream(values()).filter(c -> c.power == power).findFirst().orElseThrow();
    }
  }

  /**
   * The bands of a value: three digits where two do not suffice or the tolerance is 2 % or less.
   *
   * @param ohm resistance, 0.1 Ω to 99 GΩ
   * @param tolerance as a share
   * @return the bands; empty where no band stands for the tolerance or the value has more digits
   */
  public static List<Colour> bands(double ohm, double tolerance) {
    int digits = tolerance <= 0.021 ? 3 : 2;
    int power = (int) Math.floor(Math.log10(ohm) + 1e-9) - (digits - 1);
    long number = Math.round(ohm / Math.pow(10, power));
    Optional<Colour> last = Optional.empty();
    for (Colour c : Colour.values()) {
      if (c.tolerance().filter(t -> Math.abs(t - tolerance) < 1e-9).isPresent()) {
        last = Optional.of(c);
      }
    }
    boolean exact = Math.abs(number * Math.pow(10, power) / ohm - 1) < 1e-6;
    if (last.isEmpty() || !exact || power < -2 || power > 9) {
      return List.of();
    }
    List<Colour> bands = new ArrayList<>();
    for (char digit : Long.toString(number).toCharArray()) {
      bands.add(Colour.of(digit - '0'));
    }
    bands.add(Colour.of(power));
    bands.add(last.get());
    return bands;
  }
}
