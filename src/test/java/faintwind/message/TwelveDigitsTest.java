package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rounding to twelve digits by one shift there and back gives what exact decimals give. */
final class TwelveDigitsTest {
  private static final long SEED = 7;

  @Test
  void agreesWithExactDecimals() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200_000; i++) {
      double value =
          switch (i % 4) {
            case 0 -> Double.longBitsToDouble(random.nextLong());
            case 1 -> random.nextInt(100_000) / 1000.0 * power(random, 20);
            case 2 -> (random.nextInt(2_000_000) + 0.5) * power(random, 9);
            default -> power(random, 20) * (1 + (random.nextInt(2001) - 1000) * 1e-15);
          };
      if (Double.isFinite(value)) {
        double exact = new BigDecimal(value).round(new MathContext(12)).doubleValue();
        assertThat(UnitSymbols.twelveDigits(value)).as("%s, seed %d", value, SEED).isEqualTo(exact);
      }
    }
  }

  private static double power(Random random, int most) {
    return Math.pow(10, random.nextInt(2 * most) - most);
  }
}
