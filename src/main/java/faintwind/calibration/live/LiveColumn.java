package faintwind.calibration.live;

import java.util.OptionalDouble;

/** Columns that a live recording may have beside time and signal, by their names in the file. */
public enum LiveColumn {
  AIR("air_C"),
  PRESSURE("pressure_hPa"),
  HUMIDITY("rh_pct"),
  SUPPLY("supply_V"),
  /** Temperature of a compensated meter's own terminals. */
  TERMINAL("terminal_C");

  private final String column;

  LiveColumn(String column) {
    this.column = column;
  }

  /** The column's value of a sample, in the unit of its name. */
  public OptionalDouble value(LiveSample sample) {
    return switch (this) {
      case AIR -> scaled(sample.air().temperature_K(), 1, -273.15);
      case PRESSURE -> scaled(sample.air().pressure_Pa(), 0.01, 0);
      case HUMIDITY -> scaled(sample.air().relativeHumidity(), 100, 0);
      case SUPPLY -> sample.supply_V();
      case TERMINAL -> scaled(sample.terminal_K(), 1, -273.15);
    };
  }

  private static OptionalDouble scaled(OptionalDouble si, double scale, double shift) {
    return si.isPresent() ? OptionalDouble.of(si.getAsDouble() * scale + shift) : si;
  }

  /** Name of the column in a run file. */
  public String column() {
    return column;
  }
}
