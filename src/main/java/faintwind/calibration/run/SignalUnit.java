package faintwind.calibration.run;

import java.util.OptionalDouble;

/**
 * What the signal column of a recording is in. Numbers are kept in that unit; the fit identifies
 * ratios only.
 */
public enum SignalUnit {
  DELTA_K("delta_K", "K"),
  SIGNAL_V("signal_V", "V"),
  SIGNAL_MV("signal_mV", "mV"),
  SIGNAL_UV("signal_uV", "µV"),
  SIGNAL_COUNTS("signal_counts", "counts");

  private final String column;
  private final String symbol;

  SignalUnit(String column, String symbol) {
    this.column = column;
    this.symbol = symbol;
  }

  /** Name of the column that carries it in a run file. */
  public String column() {
    return column;
  }

  /** Number of this unit in a volt; empty where it is no voltage. */
  public OptionalDouble perVolt() {
    return switch (this) {
      case SIGNAL_V -> OptionalDouble.of(1);
      case SIGNAL_MV -> OptionalDouble.of(1e3);
      case SIGNAL_UV -> OptionalDouble.of(1e6);
      case DELTA_K, SIGNAL_COUNTS -> OptionalDouble.empty();
    };
  }

  /** Unit symbol for people. */
  public String symbol() {
    return symbol;
  }
}
