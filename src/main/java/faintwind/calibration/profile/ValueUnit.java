package faintwind.calibration.profile;

import faintwind.calibration.run.SignalUnit;
import java.util.Optional;

/** Units that a column of a foreign log may be in. */
public enum ValueUnit {
  KELVIN("K", Dimension.TEMPERATURE, 1, 0),
  CELSIUS("C", Dimension.TEMPERATURE, 1, 273.15),
  FAHRENHEIT("F", Dimension.TEMPERATURE, 1 / 1.8, 459.67 / 1.8),
  VOLT("V", Dimension.VOLTAGE, 1, 0),
  MILLIVOLT("mV", Dimension.VOLTAGE, 1e-3, 0),
  MICROVOLT("uV", Dimension.VOLTAGE, 1e-6, 0),
  COUNTS("counts", Dimension.COUNTS, 1, 0),
  PASCAL("Pa", Dimension.PRESSURE, 1, 0),
  HECTOPASCAL("hPa", Dimension.PRESSURE, 100, 0),
  KILOPASCAL("kPa", Dimension.PRESSURE, 1000, 0),
  /** Conventional millimetre of mercury, 133.322387415 Pa (BIPM SI brochure, 8th edition). */
  MMHG("mmHg", Dimension.PRESSURE, 133.322387415, 0),
  PERCENT("pct", Dimension.SHARE, 0.01, 0),
  FRACTION("1", Dimension.SHARE, 1, 0);

  private final String word;
  private final Dimension dimension;
  private final double scale;
  private final double shift;

  ValueUnit(String word, Dimension dimension, double scale, double shift) {
    this.word = word;
    this.dimension = dimension;
    this.scale = scale;
    this.shift = shift;
  }

  /** What a unit measures. */
  public enum Dimension {
    TEMPERATURE,
    VOLTAGE,
    COUNTS,
    PRESSURE,
    SHARE
  }

  /** The word in a profile. */
  public String word() {
    return word;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** A value in SI: K, V, Pa, fraction. */
  double toSi(double value) {
    return value * scale + shift;
  }

  /** The signal column that values of this unit go to as they are. */
  public Optional<SignalUnit> signal() {
    return switch (this) {
      case KELVIN -> Optional.of(SignalUnit.DELTA_K);
      case VOLT -> Optional.of(SignalUnit.SIGNAL_V);
      case MILLIVOLT -> Optional.of(SignalUnit.SIGNAL_MV);
      case MICROVOLT -> Optional.of(SignalUnit.SIGNAL_UV);
      case COUNTS -> Optional.of(SignalUnit.SIGNAL_COUNTS);
      default -> Optional.empty();
    };
  }

  static ValueUnit of(SignalUnit unit) {
    return switch (unit) {
      case DELTA_K -> KELVIN;
      case SIGNAL_V -> VOLT;
      case SIGNAL_MV -> MILLIVOLT;
      case SIGNAL_UV -> MICROVOLT;
      case SIGNAL_COUNTS -> COUNTS;
    };
  }
}
