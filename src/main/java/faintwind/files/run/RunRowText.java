package faintwind.files.run;

import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.live.LiveSample;
import faintwind.calibration.run.SignalUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Rows of a run file as text.
 *
 * @param unit unit of the signal
 * @param columns those beside time and signal
 */
record RunRowText(SignalUnit unit, Set<LiveColumn> columns) {
  private static final MathContext DIGITS = new MathContext(12);

  /** Decimals of a time in seconds; times must differ by more than half of the last. */
  private static final int TIME_DECIMALS = 6;

  List<String> names() {
    List<String> names = new ArrayList<>(List.of(LogColumns.TIME, unit.column()));
    columns.forEach(column -> names.add(column.column()));
    return names;
  }

  /** The cells of one row, without an end of line. */
  void append(StringBuilder text, LiveSample sample) {
    sample.time_s().ifPresent(time_s -> text.append(time(time_s)));
    text.append(',');
    cell(text, sample.signal());
    for (LiveColumn column : columns) {
      text.append(',');
      cell(text, column.value(sample));
    }
  }

  private static void cell(StringBuilder text, OptionalDouble value) {
    if (value.isPresent()) {
      text.append(plain(BigDecimal.valueOf(value.getAsDouble()).round(DIGITS)));
    }
  }

  static String time(double value_s) {
    return plain(BigDecimal.valueOf(value_s).setScale(TIME_DECIMALS, RoundingMode.HALF_EVEN));
  }

  private static String plain(BigDecimal rounded) {
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
