package faintwind.message;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.DECI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static javax.measure.MetricPrefix.NANO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * The unit symbols a person may type and the program may ask for. A closed list: a symbol outside
 * it is not guessed. A kelvin is both a difference and a temperature; which one is meant follows
 * from what was asked for.
 */
final class UnitSymbols {
  /** A unit with what it measures. */
  record Entry(QuantityKind kind, Unit<?> unit, double scale, double offset) {

    /** With its place among the units of its kind: system unit = offset + scale · value. */
    static Entry of(QuantityKind kind, Unit<?> unit) {
      try {
        UnitConverter system = unit.getConverterToAny(unit.getSystemUnit());
        double offset = system.convert(0.0);
        return new Entry(kind, unit, system.convert(1.0) - offset, offset);
      } catch (IncommensurableException e) {
        throw new IllegalArgumentException(unit + " has no system unit", e);
      }
    }
  }

  private static final Map<String, Entry> BY_SYMBOL = table();
  private static final Map<String, MetricPrefix> PREFIXES =
      Map.of("n", NANO, "µ", MICRO, "m", MILLI, "k", KILO, "M", MEGA, "G", GIGA, "meg", MEGA);

  private static final double TWELVE_DIGITS = 1e12;

  /** The powers of ten that a double holds exactly. */
  private static final double[] POWERS =
      IntStream.rangeClosed(0, 22).mapToDouble(n -> Double.parseDouble("1e" + n)).toArray();

  private UnitSymbols() {}

  /** The unit of a symbol; Ω, µ and spellings such as ohm and kOhm are taken alike. */
  static Optional<Entry> find(String symbol) {
    Entry asIs = BY_SYMBOL.get(symbol);
    return Optional.ofNullable(asIs == null ? BY_SYMBOL.get(canonical(symbol)) : asIs);
  }

  /** All symbols that are understood. */
  static Set<String> symbols() {
    return BY_SYMBOL.keySet();
  }

  /** The factor of a bare prefix, such as 1e6 for M; K is read as k only inside a number (4K7). */
  static Optional<Double> prefixFactor(String prefix) {
    return Optional.ofNullable(PREFIXES.get(canonical(prefix)))
        .map(found -> Math.pow(found.getValue().doubleValue(), found.getExponent()));
  }

  /**
   * A value of one unit in another of the same dimension, cleared of rounding noise beyond twelve
   * digits.
   *
   * @throws IllegalArgumentException where the two do not measure the same
   */
  static double convert(double value, Entry from, Entry to) {
    if (from.kind() == to.kind()) {
      boolean same = from.scale() == to.scale() && from.offset() == to.offset();
      double system = from.offset() + from.scale() * value;
      return twelveDigits(same ? value : (system - to.offset()) / to.scale());
    }
    try {
      return twelveDigits(from.unit().getConverterToAny(to.unit()).convert(value));
    } catch (IncommensurableException e) {
      throw new IllegalArgumentException(from.unit() + " is not " + to.unit(), e);
    }
  }

  static double twelveDigits(double value) {
    if (value == Math.rint(value) && Math.abs(value) < TWELVE_DIGITS) {
      return value + 0.0; // a zero has no sign
    }
    if (!Double.isFinite(value)) {
      return value;
    }
    int shift = 11 - (int) Math.floor(Math.log10(Math.abs(value)));
    if (Math.abs(shift) < POWERS.length) {
      // one rounding to a whole number of twelve digits, one back: exact but near a half
      double power = POWERS[Math.abs(shift)];
      double shifted = shift < 0 ? value / power : value * power;
      double whole = Math.rint(shifted);
      double size = Math.abs(shifted);
      if (size >= TWELVE_DIGITS / 10 && size < TWELVE_DIGITS && Math.abs(shifted - whole) < 0.499) {
        return shift < 0 ? whole * power : whole / power;
      }
    }
    return new BigDecimal(value).round(new MathContext(12)).doubleValue();
  }

  static String canonical(String symbol) {
    String s = symbol.replace('\u2126', 'Ω').replace('\u03bc', 'µ').trim();
    if (s.startsWith("u")) {
      s = "µ" + s.substring(1);
    }
    return s.replaceFirst("(?i)ohms?$", "Ω");
  }

  private static Map<String, Entry> table() {
    Map<String, Entry> units = new LinkedHashMap<>();
    put(units, QuantityKind.NUMBER, AbstractUnit.ONE, "");
    put(units, QuantityKind.SHARE, Units.PERCENT, "%");
    lengths(units);
    put(units, QuantityKind.MASS, Units.GRAM, "g");
    put(units, QuantityKind.MASS, Units.KILOGRAM, "kg");
    put(units, QuantityKind.MASS, MILLI(Units.GRAM), "mg");
    put(units, QuantityKind.TIME, Units.SECOND, "s", "sec");
    put(units, QuantityKind.TIME, MILLI(Units.SECOND), "ms");
    put(units, QuantityKind.TIME, Units.MINUTE, "min");
    put(units, QuantityKind.TIME, Units.HOUR, "h");
    put(units, QuantityKind.TIME, Units.DAY, "d", "day", "days");
    electric(units);
    put(units, QuantityKind.TEMPERATURE, Units.CELSIUS, "°C", "degC", "C");
    put(
        units,
        QuantityKind.TEMPERATURE,
        Units.KELVIN.multiply(5).divide(9).shift(459.67),
        "°F",
        "degF");
    put(units, QuantityKind.DIFFERENCE, Units.KELVIN, "K");
    put(units, QuantityKind.DIFFERENCE, MILLI(Units.KELVIN), "mK");
    put(units, QuantityKind.PRESSURE, Units.PASCAL, "Pa");
    put(units, QuantityKind.PRESSURE, HECTO(Units.PASCAL), "hPa", "mbar");
    put(units, QuantityKind.PRESSURE, KILO(Units.PASCAL), "kPa");
    put(units, QuantityKind.SPEED, Units.METRE_PER_SECOND, "m/s");
    put(units, QuantityKind.SPEED, CENTI(Units.METRE).divide(Units.SECOND), "cm/s");
    put(units, QuantityKind.SPEED, Units.KILOMETRE_PER_HOUR, "km/h");
    put(units, QuantityKind.ROTATION, AbstractUnit.ONE.divide(Units.MINUTE), "rpm", "1/min");
    put(units, QuantityKind.FREQUENCY, Units.HERTZ, "Hz");
    put(units, QuantityKind.FREQUENCY, KILO(Units.HERTZ), "kHz");
    return Map.copyOf(units);
  }

  private static void lengths(Map<String, Entry> units) {
    put(units, QuantityKind.LENGTH, Units.METRE, "m");
    put(units, QuantityKind.LENGTH, MILLI(Units.METRE), "mm");
    put(units, QuantityKind.LENGTH, CENTI(Units.METRE), "cm");
    put(units, QuantityKind.LENGTH, DECI(Units.METRE), "dm");
    put(units, QuantityKind.LENGTH, MICRO(Units.METRE), "µm");
    put(units, QuantityKind.LENGTH, Units.METRE.multiply(0.0254), "in", "inch", "inches", "\"");
    put(units, QuantityKind.AREA, Units.SQUARE_METRE, "m²", "m2");
    put(units, QuantityKind.AREA, Units.SQUARE_METRE.divide(1e2), "dm²", "dm2");
    put(units, QuantityKind.AREA, Units.SQUARE_METRE.divide(1e4), "cm²", "cm2");
    put(units, QuantityKind.AREA, Units.SQUARE_METRE.divide(1e6), "mm²", "mm2");
    put(units, QuantityKind.VOLUME, Units.CUBIC_METRE, "m³", "m3");
    put(units, QuantityKind.VOLUME, Units.CUBIC_METRE.divide(1e3), "L", "l");
    put(units, QuantityKind.VOLUME, Units.CUBIC_METRE.divide(1e6), "mL", "ml");
  }

  private static void electric(Map<String, Entry> units) {
    put(units, QuantityKind.RESISTANCE, Units.OHM, "Ω", "R");
    put(units, QuantityKind.RESISTANCE, MILLI(Units.OHM), "mΩ");
    put(units, QuantityKind.RESISTANCE, KILO(Units.OHM), "kΩ", "KΩ");
    put(units, QuantityKind.RESISTANCE, MEGA(Units.OHM), "MΩ");
    put(units, QuantityKind.RESISTANCE, GIGA(Units.OHM), "GΩ");
    put(units, QuantityKind.VOLTAGE, Units.VOLT, "V");
    put(units, QuantityKind.VOLTAGE, MILLI(Units.VOLT), "mV");
    put(units, QuantityKind.VOLTAGE, MICRO(Units.VOLT), "µV");
    put(units, QuantityKind.VOLTAGE, KILO(Units.VOLT), "kV");
    put(units, QuantityKind.CURRENT, Units.AMPERE, "A");
    put(units, QuantityKind.CURRENT, MILLI(Units.AMPERE), "mA");
    put(units, QuantityKind.CURRENT, MICRO(Units.AMPERE), "µA");
    Unit<?> density = Units.AMPERE.divide(Units.SQUARE_METRE);
    put(units, QuantityKind.CURRENT_DENSITY, density, "A/m²", "A/m2");
    put(units, QuantityKind.CURRENT_DENSITY, density.multiply(1e2), "A/dm²", "A/dm2");
    put(units, QuantityKind.CURRENT_DENSITY, density.multiply(10), "mA/cm²", "mA/cm2");
    put(units, QuantityKind.POWER, Units.WATT, "W");
    put(units, QuantityKind.POWER, MILLI(Units.WATT), "mW");
    put(units, QuantityKind.CHARGE, Units.AMPERE.multiply(Units.HOUR), "Ah");
    put(units, QuantityKind.CHARGE, MILLI(Units.AMPERE).multiply(Units.HOUR), "mAh");
  }

  private static void put(
      Map<String, Entry> units, QuantityKind kind, Unit<?> unit, String... symbols) {
    for (String symbol : symbols) {
      units.put(symbol, Entry.of(kind, unit));
    }
  }
}
