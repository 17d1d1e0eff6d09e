package faintwind.ui.design;

import faintwind.message.Amount;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.choice.DesignEdit;
import faintwind.physics.choice.DesignField;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.ui.part.NumberModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What a person chooses for a design: parts to pick and numbers to type, one a field. */
public final class DesignChoices {
  /** What few people change; it is said in the file or with {@code size --set}. */
  private static final Set<DesignField> FILE_ONLY =
      EnumSet.of(
          DesignField.NAME,
          DesignField.DIAMETER_IN,
          DesignField.DIAMETER_TOLERANCE,
          DesignField.PLATED_BY,
          DesignField.NICKEL,
          DesignField.NICKEL_CURRENT,
          DesignField.GOLD,
          DesignField.GOLD_CURRENT,
          DesignField.ROOM,
          DesignField.RESISTANCE,
          DesignField.LEAD_COAT,
          DesignField.VOLTAGE_TOLERANCE, // typed after the voltage
          DesignField.DROPOUT,
          DesignField.OWN_CURRENT,
          DesignField.EFFICIENCY,
          DesignField.FREE_LENGTH,
          DesignField.LOOP_LENGTH,
          DesignField.LOGGER_NAME,
          DesignField.AVERAGING,
          DesignField.PRESSURE,
          DesignField.FASTEST);

  private final Messages words;
  private final Map<DesignField, StringProperty> picks = new EnumMap<>(DesignField.class);
  private final Map<DesignField, NumberModel> numbers = new EnumMap<>(DesignField.class);

  /**
   * One thing to pick from.
   *
   * @param id as the design file names it
   * @param name in words
   */
  public record Option(String id, String name) {
    @Override
    public String toString() {
      return name;
    }
  }

  DesignChoices(Messages words) {
    this.words = words;
    for (DesignField each : form()) {
      if (each.field().range().isPresent()) {
        numbers.put(each, new NumberModel(each.field().unit(), words));
      } else {
        picks.put(each, new SimpleStringProperty(""));
      }
    }
  }

  /** The fields of the form, in its order. */
  static List<DesignField> form() {
    return Arrays.stream(DesignField.values()).filter(f -> !FILE_ONLY.contains(f)).toList();
  }

  public StringProperty pick(DesignField field) {
    return found(picks, field);
  }

  public NumberModel number(DesignField field) {
    return found(numbers, field);
  }

  private static <V> V found(Map<DesignField, V> map, DesignField field) {
    V value = map.get(field);
    if (value == null) {
      throw new IllegalArgumentException("no choice " + field);
    }
    return value;
  }

  /** What there is to pick from; coats are those that suit the metal. */
  List<Option> options(DesignField field, Catalogue parts) {
    List<Option> all = new ArrayList<>();
    if (field == DesignField.BATTERY || field == DesignField.CABLE) {
      all.add(new Option("", words.text("design.battery.none")));
    }
    String prefix = "design." + field.field().key() + ".";
    field.field().words().stream()
        .map(w -> new Option(w, field == DesignField.SERIES ? w : words.text(prefix + w)))
        .forEach(all::add);
    field.parts(parts).stream()
        .filter(l -> field != DesignField.COAT || suits(l.id(), parts))
        .map(l -> new Option(l.id(), l.name()))
        .sorted(Comparator.comparing(Option::name))
        .forEach(all::add);
    if (field == DesignField.LOGGER) {
      all.add(new Option(DesignEdit.OWN, words.text("design.logger.own")));
    }
    return all;
  }

  private boolean suits(String coat, Catalogue parts) {
    return parts
        .metal(pick(DesignField.METAL).get())
        .flatMap(metal -> parts.coat(coat).map(c -> c.suits(metal)))
        .orElse(true);
  }

  /** Shows what a design says. */
  void show(Design design) {
    picks.forEach((field, pick) -> pick.set(picked(field, design)));
    numbers.forEach((field, number) -> number.set(typed(field, design)));
    number(DesignField.HEATED_DEPTH)
        .remark()
        .set(
            DesignField.HEATED_DEPTH.of(design).isEmpty()
                ? words.text("design.reference_bore.through")
                : "");
  }

  private static String picked(DesignField field, Design design) {
    String said = field.of(design);
    if (said.isEmpty() && field == DesignField.LOGGER) {
      return DesignEdit.OWN;
    }
    return said.isEmpty() ? field.field().usual() : said;
  }

  private static String typed(DesignField field, Design design) {
    String said = field.of(design);
    return switch (field) {
      case VOLTAGE -> said + " ± " + DesignField.VOLTAGE_TOLERANCE.of(design) + " %";
      case POWER -> said.isEmpty() ? Numerals.digits(DesignEdit.power_W(design)) : said;
      default -> said;
    };
  }

  /** What was said of a field, and with it; as it was typed where it is no number. */
  Map<DesignField, String> said(DesignField field) {
    Map<DesignField, String> said = new LinkedHashMap<>();
    if (picks.containsKey(field)) {
      said.put(field, pick(field).get());
      return said;
    }
    NumberModel number = number(field);
    String typed = number.typed().get().strip();
    Optional<Amount> amount = exact(number);
    said.put(field, amount.map(a -> Field.plain(a.value())).orElse(typed));
    OptionalDouble tolerance = amount.map(Amount::tolerance).orElse(OptionalDouble.empty());
    if (field == DesignField.VOLTAGE && tolerance.isPresent()) {
      double share = tolerance.getAsDouble() / amount.orElseThrow().value();
      said.put(DesignField.VOLTAGE_TOLERANCE, Field.plain(100 * share));
    }
    return said;
  }

  /** The number of a field that holds one without a bound. */
  static Optional<Amount> exact(NumberModel number) {
    return number.amount().filter(a -> a.bound() == Amount.Bound.EXACT);
  }
}
