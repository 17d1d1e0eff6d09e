package faintwind.files.run;

import faintwind.physics.AirField;
import java.util.OptionalDouble;

/** A cell that speaks of the air: which numbers it may hold, and its value in SI. */
enum AirCell {
  TEMPERATURE(LogColumns.AIR, AirField.TEMPERATURE),
  PRESSURE(LogColumns.PRESSURE, AirField.PRESSURE),
  HUMIDITY(LogColumns.HUMIDITY, AirField.HUMIDITY);

  private final String column;
  private final AirField air;

  AirCell(String column, AirField air) {
    this.column = column;
    this.air = air;
  }

  String column() {
    return column;
  }

  boolean allows(double cell) {
    return air.field().allows(cell);
  }

  double si(double cell) {
    return air.si(cell);
  }

  /** The allowed numbers, for a message. */
  String allowed() {
    return air.field().allowed();
  }

  /** The value in SI, or nothing where the cell has none or one that no air can have. */
  OptionalDouble siOf(OptionalDouble cell) {
    return cell.isPresent() && allows(cell.getAsDouble())
        ? OptionalDouble.of(si(cell.getAsDouble()))
        : OptionalDouble.empty();
  }
}
