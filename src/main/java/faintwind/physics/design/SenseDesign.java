package faintwind.physics.design;

import faintwind.physics.part.LoggerProfile;
import faintwind.physics.part.ThermocoupleType;
import java.util.Optional;

/**
 * The thermocouple between the balls and what reads it.
 *
 * @param type thermocouple type
 * @param gauge its wire
 * @param freeLength_m length of each of its wires free in the air at a ball, m
 * @param loopLength_m length of the pair from the balls to where it becomes copper, m
 * @param logger what reads it
 * @param gain amplifier gain before the logger, volts out per volt in
 * @param averaging_s time over which readings are averaged, s
 */
public record SenseDesign(
    ThermocoupleType type,
    ThermocoupleType.Gauge gauge,
    double freeLength_m,
    double loopLength_m,
    LoggerProfile logger,
    double gain,
    double averaging_s) {

  /** The same with another logger. */
  public SenseDesign with(LoggerProfile other) {
    return new SenseDesign(type, gauge, freeLength_m, loopLength_m, other, gain, averaging_s);
  }

  /** The same with a thermocouple of another type, as thick; empty where its wire is not known. */
  public Optional<SenseDesign> with(ThermocoupleType other) {
    return other
        .gauge(gauge.awg())
        .map(
            wire ->
                new SenseDesign(
                    other, wire, freeLength_m, loopLength_m, logger, gain, averaging_s));
  }
}
