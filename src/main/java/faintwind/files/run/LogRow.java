package faintwind.files.run;

import java.util.OptionalDouble;

/**
 * One row of a field log, as far as it could be read. A row whose time or signal is not there
 * cannot be converted, but is still handed on.
 *
 * @param line number of the line in the file, from 1
 * @param text the row as it stood, for passing through: exactly as many cells as the header has;
 *     cells that were missing are added empty, cells too many stand together in the last one
 * @param time_s time on the file's clock, s
 * @param signal in the file's unit; for a compensated meter less its terminal temperature
 * @param air what the row says of the air
 * @param supply_V heater supply, V
 */
public record LogRow(
    int line,
    String text,
    OptionalDouble time_s,
    OptionalDouble signal,
    Air air,
    OptionalDouble supply_V) {

  /**
   * The air beside the balls; a number that no air can have counts as not recorded.
   *
   * @param temperature_K 200 to 400 K
   * @param pressure_Pa 30 to 120 kPa
   * @param relativeHumidity 0 to 1
   */
  public record Air(
      OptionalDouble temperature_K, OptionalDouble pressure_Pa, OptionalDouble relativeHumidity) {}
}
