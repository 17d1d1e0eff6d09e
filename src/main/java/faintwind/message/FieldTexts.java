package faintwind.message;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What was given for each field, in a file, a form or on the command line. Where nothing was given
 * the usual value counts, and that is noted.
 */
public final class FieldTexts {
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Function<Field, Where> place;
  private final List<String> assumed = new ArrayList<>();

  /**
   * Texts by id of their field; empty ones count as not given.
   *
   * @param place how a field is found by the person who gave it
   */
  public FieldTexts(Map<String, String> texts, Function<Field, Where> place) {
    texts.forEach(
        (id, text) -> {
          if (!text.isBlank()) {
            this.texts.put(id, text.strip());
          }
        });
    this.place = place;
  }

  public Where where(Field field) {
    return place.apply(field);
  }

  /** Everything that is wrong with each text by itself; a list is judged item by item. */
  public List<Problem> problems(Collection<Field> fields) {
    return fields.stream()
        .flatMap(f -> items(f).stream().flatMap(text -> f.trouble(text, where(f)).stream()))
        .toList();
  }

  private List<String> items(Field field) {
    String text = texts.getOrDefault(field.id(), "");
    return field.range().isEmpty() ? List.of(text) : Arrays.asList(text.split(",", -1));
  }

  public boolean has(Field field) {
    return texts.containsKey(field.id());
  }

  public Optional<String> entry(Field field) {
    return Optional.ofNullable(texts.get(field.id()));
  }

  /** The text, or else the usual one. */
  public String text(Field field) {
    return text(field, field.usual());
  }

  /** The text, or else one that follows from others. */
  public String text(Field field, String otherwise) {
    return entry(field)
        .orElseGet(
            () -> {
              assumed.add(field.id() + " = " + otherwise);
              return otherwise;
            });
  }

  /** The constant of a word, or of the usual one; ask for problems first. */
  public <E extends Enum<E>> E word(Field field, Class<E> type) {
    return Enum.valueOf(type, text(field).toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** The number, or else the usual one; ask for problems first. */
  public double number(Field field) {
    return Double.parseDouble(text(field));
  }

  /** The number, or else one that follows from others. */
  public double number(Field field, double otherwise) {
    return Double.parseDouble(text(field, Field.plain(otherwise)));
  }

  /** The numbers of a list, empty where one was left out; none where nothing was given. */
  public List<OptionalDouble> numbers(Field field) {
    return entry(field).stream()
        .flatMap(text -> Arrays.stream(text.split(",", -1)))
        .map(
            t ->
                t.isBlank()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Double.parseDouble(t.strip())))
        .toList();
  }

  /** A number in another unit, where one was given. */
  public OptionalDouble optional(Field field, double factor) {
    OptionalDouble number = optional(field);
    return number.isPresent() ? OptionalDouble.of(number.getAsDouble() * factor) : number;
  }

  /** The number, where one was given. */
  public OptionalDouble optional(Field field) {
    String text = texts.get(field.id());
    return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
  }

  /** Each value that nobody gave, such as {@code sense.gain = 1}. */
  public List<String> assumed() {
    return List.copyOf(assumed);
  }
}
