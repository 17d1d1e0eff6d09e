package faintwind.calibration.draft;

import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.ValueUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Units as people write them over a column. */
final class SampleUnit {
  private static final Map<String, ValueUnit> VALUES =
      Map.ofEntries(
          Map.entry("K", ValueUnit.KELVIN),
          Map.entry("°C", ValueUnit.CELSIUS),
          Map.entry("C", ValueUnit.CELSIUS),
          Map.entry("degC", ValueUnit.CELSIUS),
          Map.entry("°F", ValueUnit.FAHRENHEIT),
          Map.entry("F", ValueUnit.FAHRENHEIT),
          Map.entry("V", ValueUnit.VOLT),
          Map.entry("mV", ValueUnit.MILLIVOLT),
          Map.entry("uV", ValueUnit.MICROVOLT),
          Map.entry("counts", ValueUnit.COUNTS),
          Map.entry("Pa", ValueUnit.PASCAL),
          Map.entry("hPa", ValueUnit.HECTOPASCAL),
          Map.entry("mbar", ValueUnit.HECTOPASCAL),
          Map.entry("kPa", ValueUnit.KILOPASCAL),
          Map.entry("mmHg", ValueUnit.MMHG),
          Map.entry("%", ValueUnit.PERCENT),
          Map.entry("%rH", ValueUnit.PERCENT),
          Map.entry("%RH", ValueUnit.PERCENT),
          Map.entry("pct", ValueUnit.PERCENT));
  private static final Map<String, TimeForm> TIMES =
      Map.ofEntries(
          Map.entry("d", TimeForm.DAYS),
          Map.entry("h", TimeForm.HOURS),
          Map.entry("min", TimeForm.MINUTES),
          Map.entry("s", TimeForm.SECONDS),
          Map.entry("sec", TimeForm.SECONDS),
          Map.entry("ms", TimeForm.MILLISECONDS),
          Map.entry("millis", TimeForm.MILLISECONDS),
          Map.entry("us", TimeForm.MICROSECONDS),
          Map.entry("micros", TimeForm.MICROSECONDS));
  private static final Pattern BRACKETS = Pattern.compile(".*[\\[(]\\s*(.+?)\\s*[\\])]\\s*");
  private static final Pattern END = Pattern.compile(".*[_/ ]\\s*(\\S+)");

  private SampleUnit() {}

  /** Whether a text is nothing but a unit. */
  static boolean isUnit(String text) {
    String plain = bare(text);
    return VALUES.containsKey(plain) || TIMES.containsKey(plain);
  }

  /** The unit that heads tell. */
  static Optional<ValueUnit> value(List<String> heads) {
    return heads.stream()
        .map(SampleUnit::written)
        .map(VALUES::get)
        .flatMap(unit -> Optional.ofNullable(unit).stream())
        .findFirst();
  }

  /** The unit of time that heads tell. */
  static Optional<TimeForm> time(List<String> heads) {
    return heads.stream()
        .map(head -> written(head.toLowerCase(Locale.ROOT)))
        .map(TIMES::get)
        .flatMap(unit -> Optional.ofNullable(unit).stream())
        .findFirst();
  }

  /** The part of a head that may be its unit: in brackets, at the end, or all of it. */
  private static String written(String head) {
    Matcher brackets = BRACKETS.matcher(head);
    if (brackets.matches()) {
      return bare(brackets.group(1));
    }
    Matcher end = END.matcher(head);
    return bare(end.matches() ? end.group(1) : head);
  }

  private static String bare(String text) {
    String plain = text.strip().replaceAll("^[\\[(]|[\\])]$", "").strip();
    return plain.equals("℃") ? "°C" : plain.replace('µ', 'u').replace('μ', 'u');
  }
}
