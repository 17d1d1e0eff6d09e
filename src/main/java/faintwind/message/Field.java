package faintwind.message;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A typed field, described once: the file, the form and the command line all judge by it and say
 * the same of the same text. Its name in words is in the bundle under {@code field.ID}.
 *
 * @param id key in the file, with dots, such as {@code ball.diameter_mm}
 * @param unit symbol of the unit it is typed in; empty for a plain number or a word
 * @param range of a number
 * @param words the words it may be; empty for a number or a free text
 * @param usual what counts where nothing was said; empty where nothing does
 * @param required whether something must be said
 */
public record Field(
    String id,
    String unit,
    Optional<Range> range,
    List<String> words,
    String usual,
    boolean required) {
  private static final int DIGITS = 9;
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");

  /**
   * What a number may be.
   *
   * @param least the smallest that is taken
   * @param most the largest that is taken
   * @param whole whether it has no fraction
   */
  public record Range(double least, double most, boolean whole) {
    boolean contains(double value) {
      return value >= least && value <= most;
    }
  }

  public Field {
    words = List.copyOf(words);
  }

  /** A number in the unit that its id ends with, such as {@code _mm}. */
  public static Field number(String id, double least, double most) {
    Range range = new Range(least, most, false);
    return new Field(id, unit(id), Optional.of(range), List.of(), "", false);
  }

  public static Field whole(String id, int least, int most) {
    Range range = new Range(least, most, true);
    return new Field(id, "", Optional.of(range), List.of(), "", false);
  }

  /** One of a list of words. */
  public static Field word(String id, Enum<?>... values) {
    List<String> words = Arrays.stream(values).map(Field::word).toList();
    return new Field(id, "", Optional.empty(), words, "", false);
  }

  public static Field text(String id) {
    return word(id);
  }

  /** A constant as a file and the command line write it, such as {@code both-ways}. */
  public static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String unit(String id) {
    if (id.endsWith("_m_s")) {
      return "m/s";
    }
    return switch (id.substring(id.lastIndexOf('_') + 1)) {
      case "um" -> "µm";
      case "uV" -> "µV";
      case "m3" -> "m³";
      case "dm2" -> "A/dm²";
      case "cm2" -> "cm²";
      case "ohm" -> "Ω";
      case "pct" -> "%";
      case "C" -> "°C";
      case "mm", "m", "W", "V", "mA", "mV", "hPa", "s", "h", "min" ->
          id.substring(id.lastIndexOf('_') + 1);
      default -> "";
    };
  }

  public Field usually(String value) {
    return new Field(id, unit, range, words, value, required);
  }

  public Field needed() {
    return new Field(id, unit, range, words, usual, true);
  }

  /** The id without its groups, such as {@code diameter_mm}. */
  public String key() {
    return id.substring(id.lastIndexOf('.') + 1);
  }

  /** Bundle key of its name in words. */
  public String nameKey() {
    return "field." + id;
  }

  /** What is wrong with a text; an empty one is wrong only where something must be said. */
  public Optional<Problem> trouble(String text, Where where) {
    if (text.isBlank()) {
      return required
          ? Optional.of(Problem.error("field.missing", where, "", nameKey()))
          : Optional.empty();
    }
    if (range.isPresent()) {
      return trouble(text, range.get(), where);
    }
    return words.isEmpty() || words.contains(text)
        ? Optional.empty()
        : Optional.of(
            Problem.error("field.unknown-word", where, text, nameKey(), String.join(", ", words)));
  }

  /**
   * Makes sure that a number may be typed, in the field's unit.
   *
   * @throws IllegalArgumentException where it may not: whoever has it from outside asks for trouble
   */
  public void require(double value) {
    trouble(plain(value), Where.NOWHERE)
        .ifPresent(
            problem -> {
              throw new IllegalArgumentException(id + " = " + value + ", allowed " + range);
            });
  }

  /** Whether a number may be given; any, where the field has no range. */
  public boolean allows(double value) {
    return range.isEmpty() || range.get().contains(value);
  }

  /** The numbers that may be given, such as {@code 0 … 100}; empty where the field has no range. */
  public String allowed() {
    return range.map(r -> plain(r.least()) + " … " + plain(r.most())).orElse("");
  }

  private Optional<Problem> trouble(String text, Range allowed, Where where) {
    String id;
    if (!NUMBER.matcher(text.strip()).matches()) {
      id = "field.not-a-number";
    } else {
      double value = Double.parseDouble(text.strip());
      if (!allowed.contains(value)) {
        id = "field.outside";
      } else if (allowed.whole() && value != Math.rint(value)) {
        id = "field.not-whole";
      } else {
        return Optional.empty();
      }
    }
    String after = unit.isEmpty() ? "" : " " + unit;
    return Optional.of(
        Problem.error(
            id, where, text, nameKey(), plain(allowed.least()), plain(allowed.most()), after));
  }

  /** A number as a field prints it: units back and forth leave digits such as 12.7…01. */
  public static String plain(double value) {
    return Numerals.digits(value, DIGITS);
  }
}
