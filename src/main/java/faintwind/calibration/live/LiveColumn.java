package faintwind.calibration.live;

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

  /** Name of the column in a run file. */
  public String column() {
    return column;
  }
}
