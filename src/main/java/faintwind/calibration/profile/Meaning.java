package faintwind.calibration.profile;

import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.run.Possible;
import faintwind.calibration.run.SignalUnit;
import java.util.Optional;

/** What a column of a foreign log says. */
public enum Meaning {
  /** Heated ball minus reference ball, or what was recorded in its place. */
  SIGNAL("signal", ValueUnit.KELVIN),
  /** Temperature of the heated ball; needs {@link #REFERENCE} beside it. */
  HEATED("heated", ValueUnit.CELSIUS),
  /** Temperature of the reference ball. */
  REFERENCE("reference", ValueUnit.CELSIUS),
  AIR("air", ValueUnit.CELSIUS),
  PRESSURE("pressure", ValueUnit.HECTOPASCAL),
  HUMIDITY("humidity", ValueUnit.PERCENT),
  SUPPLY("supply", ValueUnit.VOLT),
  /** Temperature of a compensated meter's own terminals. */
  TERMINAL("terminal", ValueUnit.CELSIUS);

  /** Tin-lead solder melts at 183 °C. */
  private static final double HOTTEST_K = 456.15;

  private final String word;
  private final ValueUnit ownUnit;

  Meaning(String word, ValueUnit ownUnit) {
    this.word = word;
    this.ownUnit = ownUnit;
  }

  /** The word in a profile. */
  public String word() {
    return word;
  }

  /** Unit in which a run file has it. */
  ValueUnit ownUnit() {
    return ownUnit;
  }

  /** The column of a run file that it goes to, where that is not the signal's. */
  public Optional<LiveColumn> column() {
    return switch (this) {
      case SIGNAL, HEATED, REFERENCE -> Optional.empty();
      case AIR -> Optional.of(LiveColumn.AIR);
      case PRESSURE -> Optional.of(LiveColumn.PRESSURE);
      case HUMIDITY -> Optional.of(LiveColumn.HUMIDITY);
      case SUPPLY -> Optional.of(LiveColumn.SUPPLY);
      case TERMINAL -> Optional.of(LiveColumn.TERMINAL);
    };
  }

  /** Whether a column of this meaning can be in that unit. */
  public boolean allows(ValueUnit unit) {
    return switch (this) {
      case SIGNAL -> unit.signal().isPresent();
      case HEATED, REFERENCE, AIR, TERMINAL -> unit.dimension() == ValueUnit.Dimension.TEMPERATURE;
      case PRESSURE -> unit.dimension() == ValueUnit.Dimension.PRESSURE;
      case HUMIDITY -> unit.dimension() == ValueUnit.Dimension.SHARE;
      case SUPPLY -> unit.dimension() == ValueUnit.Dimension.VOLTAGE;
    };
  }

  /** Whether a balls' surroundings, or a supply, can have this value in SI. */
  boolean isPossible(double si) {
    return switch (this) {
      case SIGNAL -> true;
      case SUPPLY -> Possible.of(SignalUnit.SIGNAL_V).allowsSupply(si);
      case HEATED, REFERENCE -> si >= 200 && si <= HOTTEST_K;
      case AIR, TERMINAL -> si >= 200 && si <= 400;
      case PRESSURE -> si >= 30_000 && si <= 120_000;
      case HUMIDITY -> si >= 0 && si <= 1;
    };
  }
}
