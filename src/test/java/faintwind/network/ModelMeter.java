package faintwind.network;

import faintwind.guide.checklist.MeterClass;
import faintwind.guide.checklist.MeterRange;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * A meter that is wrong anywhere within its class: each reading by up to share · reading and by up
 * to its counts, independently and evenly; it shows whole counts, and OL beyond its last range.
 */
final class ModelMeter {
  /** What is left of the leads' resistance after it was taken off, Ω. */
  private static final double TIPS_OHM = 0.1;

  private final MeterClass meter;
  private final RandomGenerator random;

  ModelMeter(MeterClass meter, RandomGenerator random) {
    this.meter = meter;
    this.random = random;
  }

  String ohms(double ohm) {
    return show(ohm + TIPS_OHM * random.nextDouble(), "Ω");
  }

  /** What the display shows, as a person types it. */
  String show(double value, String unit) {
    Optional<MeterRange> range = meter.range(value, unit);
    while (range.isPresent()) {
      MeterRange r = range.get();
      double shown = value * (1 + r.share() * evenly()) + r.counts() * r.step() * evenly();
      if (Math.abs(shown) <= r.top()) {
        BigDecimal step = BigDecimal.valueOf(r.step());
        BigDecimal counts =
            BigDecimal.valueOf((unit.equals("V") ? shown : Math.max(0, shown)) / r.step())
                .setScale(0, RoundingMode.HALF_EVEN);
        return counts.multiply(step).toPlainString() + " " + unit;
      }
      range = meter.range(r.top() * 1.001, unit);
    }
    return "OL " + BigDecimal.valueOf(meter.top(unit).orElseThrow()).toPlainString() + " " + unit;
  }

  private double evenly() {
    return 2 * random.nextDouble() - 1;
  }
}
