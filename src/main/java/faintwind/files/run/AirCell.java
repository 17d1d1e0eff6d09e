package faintwind.files.run;

import faintwind.files.NumberCell;
import java.util.OptionalDouble;

/**
 * A cell that speaks of the air: which numbers it may hold, and its value in SI. The bounds are
 * those of {@link faintwind.physics.AirState}.
 */
enum AirCell {
  TEMPERATURE(LogColumns.AIR, -73, 126) {
    @Override
    double toSi(double cell) {
      return cell + 273.15;
    }
  },
  PRESSURE(LogColumns.PRESSURE, 300, 1200) {
    @Override
    double toSi(double cell) {
      return cell * 100;
    }
  },
  HUMIDITY(LogColumns.HUMIDITY, 0, 100) {
    @Override
    double toSi(double cell) {
      return cell / 100;
    }
  };

  private final String column;
  private final double low;
  private final double high;

  AirCell(String column, double low, double high) {
    this.column = column;
    this.low = low;
    this.high = high;
  }

  String column() {
    return column;
  }

  boolean allows(double cell) {
    return cell >= low && cell <= high;
  }

  /** The allowed numbers, for a message. */
  String allowed() {
    return NumberCell.shown(low) + " … " + NumberCell.shown(high);
  }

  abstract double toSi(double cell);

  /** The value in SI, or nothing where the cell has none or one that no air can have. */
  OptionalDouble siOf(OptionalDouble cell) {
    return cell.isPresent() && allows(cell.getAsDouble())
        ? OptionalDouble.of(toSi(cell.getAsDouble()))
        : OptionalDouble.empty();
  }
}
