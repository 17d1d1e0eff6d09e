package faintwind.message;

import faintwind.message.Amount.Bound;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a number that a person typed becomes a quantity: {@code 1/2 in}, {@code 0,25 W}, {@code 4k7},
 * {@code OL}, {@code OL 20M} (over range on the range to 20 MΩ), {@code > 20 M}, {@code 5 V ±2 %}.
 * Decimal point and comma are both taken. What could mean two things ({@code 1,200}) is asked,
 * never guessed.
 *
 * <p>A number without a unit is in the unit asked for, except that a bare fraction in a length is
 * in inches. A bare prefix ({@code 420k}) stands before the plain unit: 420 kΩ also where MΩ was
 * asked for.
 */
public final class NumberText {
  private static final Pattern OVER =
      Pattern.compile("(?i)[o0]\\.?l\\.?|over(?: ?range)?|open|∞|inf(?:inity)?");

  /** Over range with the range it was seen on: {@code OL 20M}, {@code OL (2 MΩ)}. */
  private static final Pattern OVER_ON =
      Pattern.compile(
          "(?i)(?:[o0]\\.?l\\.?|over(?: ?range)?)(?: *[(@]| *on| *at| ) *([0-9][^()]*)\\)?");

  private static final Pattern BOUND = Pattern.compile("^(>=|<=|>|<|≥|≤)\\s*(.*)$");

  private static final Pattern BARE = Pattern.compile("[0-9][0-9., ]*");

  private NumberText() {}

  /**
   * Reads what was typed.
   *
   * @param typed the text
   * @param unit symbol of the unit that is asked for, such as {@code MΩ} or {@code mm}; empty for a
   *     plain number
   * @return the amount in that unit; refused where it is not a number, could mean two numbers, is
   *     of another dimension, or is negative where that cannot be
   * @throws IllegalArgumentException where {@code unit} is not a known symbol
   */
  public static Checked<Amount> read(String typed, String unit) {
    UnitSymbols.Entry target =
        UnitSymbols.find(unit)
            .orElseThrow(() -> new IllegalArgumentException("unit = " + unit + ", not known"));
    String text = plain(typed);
    if (text.isEmpty()) {
      return refused("number.empty", typed, unit, target);
    }
    if (OVER.matcher(text).matches()) {
      return Checked.ok(Amount.overRange(unit));
    }
    Matcher over = OVER_ON.matcher(text);
    Matcher bounded = BOUND.matcher(text);
    Bound bound = Bound.EXACT;
    if (over.matches()) {
      bound = Bound.AT_LEAST;
      text = over.group(1).trim();
    } else if (bounded.matches()) {
      bound = ">≥".contains(bounded.group(1).substring(0, 1)) ? Bound.AT_LEAST : Bound.AT_MOST;
      text = bounded.group(2);
    }
    int split = text.indexOf('±');
    String main = split < 0 ? text : text.substring(0, split).trim();
    if (Digits.isUnsure(main)) {
      String[] both = Digits.bothReadings(main);
      return Checked.refused(
          Problem.error("number.unsure", Where.NOWHERE, typed.trim(), both[0], both[1]));
    }
    Optional<Digits.Parsed> parsed = Digits.read(main);
    if (parsed.isEmpty()) {
      return refused("number.not-a-number", typed, unit, target);
    }
    Typed number = new Typed(typed, unit, target, bound);
    return number.withTolerance(parsed.get(), split < 0 ? "" : text.substring(split + 1).trim());
  }

  /**
   * A bare number where megohms are asked for may be what the meter shows in ohms: a short circuit
   * of 27 Ω must not count as 27 MΩ.
   *
   * @return both ways to say it, with their units; none where there is nothing to ask
   */
  public static List<String> eitherUnit(String typed, Amount read) {
    String text = plain(typed);
    boolean bare = read.unit().equals("MΩ") && BARE.matcher(text).matches() && read.value() > 0;
    return bare ? List.of(text + " MΩ", text + " Ω") : List.of();
  }

  /** Whether the program knows a unit symbol. */
  public static boolean knowsUnit(String unit) {
    return UnitSymbols.find(unit).isPresent();
  }

  /**
   * A value in another unit of the same dimension.
   *
   * @throws IllegalArgumentException where a symbol is not known or the dimensions differ
   */
  public static double convert(double value, String from, String to) {
    return UnitSymbols.convert(value, entry(from), entry(to));
  }

  /** Whether two symbols are known and measure the same kind of quantity. */
  public static boolean measureTheSame(String unit, String other) {
    Optional<QuantityKind> kind = UnitSymbols.find(unit).map(UnitSymbols.Entry::kind);
    return kind.isPresent() && kind.equals(UnitSymbols.find(other).map(UnitSymbols.Entry::kind));
  }

  static UnitSymbols.Entry entry(String unit) {
    return UnitSymbols.find(unit)
        .orElseThrow(() -> new IllegalArgumentException("unit = " + unit + ", not known"));
  }

  private static String plain(String typed) {
    return typed
        .replaceAll("[\\u00a0\\u2009\\u202f\\t]", " ")
        .replace('\u2212', '-')
        .replace('\u2126', 'Ω')
        .replace('\u03bc', 'µ')
        .replace("+/-", "±")
        .replace("+-", "±")
        .replaceAll("(?<=\\d) *½", " 1/2")
        .replaceAll("(?<=\\d) *¼", " 1/4")
        .replaceAll("(?<=\\d) *¾", " 3/4")
        .replace("½", "1/2")
        .replace("¼", "1/4")
        .replace("¾", "3/4")
        .trim();
  }

  private static Checked<Amount> refused(
      String id, String typed, String unit, UnitSymbols.Entry target) {
    String wanted = unit.isEmpty() ? "1" : unit;
    return Checked.refused(
        Problem.error(id, Where.NOWHERE, typed.trim(), wanted, target.kind().example()));
  }

  /** The number is known; the unit and the tolerance are still text. */
  private record Typed(String typed, String unit, UnitSymbols.Entry target, Bound bound) {

    Checked<Amount> withTolerance(Digits.Parsed parsed, String tolerance) {
      Optional<Scale> scale = scale(parsed);
      if (scale.isEmpty()) {
        return wrongUnit(parsed.rest());
      }
      double value = scale.get().toTarget(parsed.value(), target);
      if (value < 0 && !target.kind().mayBeNegative()) {
        return refused("number.negative", typed, unit, target);
      }
      if (tolerance.isEmpty()) {
        return Checked.ok(new Amount(value, unit, bound, OptionalDouble.empty()));
      }
      OptionalDouble half = tolerance(parsed.value(), scale.get(), tolerance);
      return half.isEmpty()
          ? refused("number.tolerance", typed, unit, target)
          : Checked.ok(new Amount(value, unit, bound, half));
    }

    private OptionalDouble tolerance(double number, Scale scale, String text) {
      Optional<Digits.Parsed> parsed = Digits.isUnsure(text) ? Optional.empty() : Digits.read(text);
      if (parsed.isEmpty() || parsed.get().value() < 0) {
        return OptionalDouble.empty();
      }
      double half = parsed.get().value();
      String rest = parsed.get().rest();
      if (rest.equals("%") && target.kind() != QuantityKind.SHARE) {
        return OptionalDouble.of(
            UnitSymbols.twelveDigits(Math.abs(scale.toTarget(number, target)) * half / 100));
      }
      Optional<Scale> own = rest.isEmpty() ? Optional.of(scale) : scale(parsed.get());
      return own.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(
              UnitSymbols.twelveDigits(
                  own.get().toTarget(half, target) - own.get().toTarget(0, target)));
    }

    private Optional<Scale> scale(Digits.Parsed parsed) {
      String rest = parsed.rest();
      if (rest.isEmpty()) {
        boolean inches = parsed.fraction() && target.kind() == QuantityKind.LENGTH;
        return Optional.of(new Scale(1, inches ? entry("in") : target));
      }
      Optional<UnitSymbols.Entry> named = UnitSymbols.find(rest).filter(this::fits);
      if (named.isPresent()) {
        return Optional.of(new Scale(1, asTarget(named.get())));
      }
      if (!target.kind().takesBarePrefix()) {
        return Optional.empty();
      }
      return UnitSymbols.prefixFactor(rest)
          .map(factor -> new Scale(factor, entry(target.kind().baseSymbol())));
    }

    private boolean fits(UnitSymbols.Entry named) {
      QuantityKind wanted = target.kind();
      return named.kind() == wanted
          || (wanted == QuantityKind.DIFFERENCE && named.equals(entry("°C")))
          || (wanted == QuantityKind.TEMPERATURE && named.equals(entry("K")))
          || (wanted == QuantityKind.NUMBER && named.kind() == QuantityKind.SHARE);
    }

    /** A difference typed in °C is one in kelvin: no 273.15 is added. */
    private UnitSymbols.Entry asTarget(UnitSymbols.Entry named) {
      return target.kind() == QuantityKind.DIFFERENCE && named.equals(entry("°C"))
          ? entry("K")
          : named;
    }

    private Checked<Amount> wrongUnit(String rest) {
      Optional<UnitSymbols.Entry> known = UnitSymbols.find(rest);
      String id = known.isPresent() ? "number.wrong-dimension" : "number.unknown-unit";
      if (rest.equals("K") && target.kind().takesBarePrefix()) {
        id = "number.kelvin-or-kilo";
      }
      if (known.isEmpty() && rest.chars().anyMatch(Character::isDigit)) {
        // 4o2: digits on both sides of a slip of the finger
        id = "number.not-a-number";
      }
      String wanted = unit.isEmpty() ? "1" : unit;
      return Checked.refused(
          Problem.error(id, Where.NOWHERE, typed.trim(), wanted, target.kind().example(), rest));
    }
  }

  /** A factor and the unit that it stands before. */
  private record Scale(double factor, UnitSymbols.Entry entry) {
    double toTarget(double number, UnitSymbols.Entry target) {
      return UnitSymbols.convert(number * factor, entry, target);
    }
  }
}
