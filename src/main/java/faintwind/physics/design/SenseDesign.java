package faintwind.physics.design;

import faintwind.physics.Interval;
import faintwind.physics.part.LoggerProfile;
import faintwind.physics.part.ThermocoupleType;
import java.util.Optional;

/**
 * The thermocouple between the balls and what reads it: one piece of the negative alloy from ball
 * to ball, and from each ball a piece of the positive alloy to where it becomes copper.
 *
 * @param type thermocouple type
 * @param gauge its wire
 * @param lengths of its pieces
 * @param logger what reads it
 * @param gain amplifier gain before the logger, volts out per volt in
 * @param averaging_s time over which readings are averaged, s
 */
public record SenseDesign(
    ThermocoupleType type,
    ThermocoupleType.Gauge gauge,
    Lengths lengths,
    LoggerProfile logger,
    double gain,
    double averaging_s) {

  /** What the steps let a builder cut more of each piece, for a junction that fails, m. */
  private static final double MORE_M = 0.05;

  /**
   * Lengths of the wires.
   *
   * @param free_m of each free in the air at a ball, m
   * @param loop_m of each piece of the positive alloy, from a ball to where it becomes copper, m
   * @param between_m of the piece of the negative alloy, from ball to ball, m
   */
  public record Lengths(double free_m, double loop_m, double between_m) {
    /** Length of wire bought as a pair that gives all three pieces, what may fail included, m. */
    public double pair_m() {
      return Math.max(2 * (loop_m + MORE_M), between_m + MORE_M);
    }
  }

  /**
   * Resistance of the loop, Ω: both positive pieces and the negative one, each as long as designed
   * or with all that was cut more. The legs are seldom as long as the middle, and the alloys differ
   * in resistance by up to thirty times.
   */
  public Interval loop_ohm() {
    Interval positive = Interval.range(2 * lengths.loop_m(), 2 * (lengths.loop_m() + MORE_M));
    Interval negative = Interval.range(lengths.between_m(), lengths.between_m() + MORE_M);
    Interval share = type.alloys().positiveShare();
    Interval pairs = share.times(positive).plus(Interval.exact(1).minus(share).times(negative));
    return gauge.pair_ohm_m().times(pairs);
  }

  /** The same with another logger. */
  public SenseDesign with(LoggerProfile other) {
    return new SenseDesign(type, gauge, lengths, other, gain, averaging_s);
  }

  /** The same with a thermocouple of another type, as thick; empty where its wire is not known. */
  public Optional<SenseDesign> with(ThermocoupleType other) {
    return other
        .gauge(gauge.awg())
        .map(wire -> new SenseDesign(other, wire, lengths, logger, gain, averaging_s));
  }
}
