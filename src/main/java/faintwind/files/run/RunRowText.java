package faintwind.files.run;

import faintwind.calibration.live.LiveColumn;
import faintwind.calibration.live.LiveSample;
import faintwind.calibration.run.SignalUnit;
import faintwind.message.Numerals;
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
  private static final int DIGITS = 12;

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
      text.append(Numerals.digits(value.getAsDouble(), DIGITS));
    }
  }

  static String time(double value_s) {
    return Numerals.shortest(value_s, TIME_DECIMALS);
  }
}
