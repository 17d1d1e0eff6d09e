package faintwind.physics.design;

import java.math.BigDecimal;
import java.math.MathContext;

/** A number with three digits, as a detail of a problem; point as decimal mark. */
public final class ThreeDigits {
  private static final MathContext THREE = new MathContext(3);

  private ThreeDigits() {}

  public static String of(double value) {
    if (value == 0) {
      return "0";
    }
    BigDecimal three = new BigDecimal(value).round(THREE).stripTrailingZeros();
    return three.toPlainString();
  }
}
