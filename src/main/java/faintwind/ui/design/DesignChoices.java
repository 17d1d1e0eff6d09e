package faintwind.ui.design;

import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.physics.Constants;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignChange;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.Label;
import faintwind.ui.part.NumberModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What a person chooses for a design: parts to pick and numbers to type. */
public final class DesignChoices {
  private static final double MM = 1e3;

  private final Messages words;
  private final Map<Pick, StringProperty> picks = new EnumMap<>(Pick.class);
  private final Map<Figure, NumberModel> numbers = new EnumMap<>(Figure.class);

  /** A part or a word to pick. */
  public enum Pick {
    METAL("ball", "metal"),
    COAT("ball", "coat"),
    RESISTOR("heater", "resistor"),
    LEAD("heater", "lead_wire"),
    SERIES("heater", "series"),
    REGULATOR("supply", "regulator"),
    BATTERY("supply", "battery"),
    CABLE("supply", "cable"),
    THERMOCOUPLE("sense", "thermocouple"),
    LOGGER("sense", "logger"),
    PLACE("use", "place");

    private final String group;
    private final String key;

    Pick(String group, String key) {
      this.group = group;
      this.key = key;
    }
  }

  /** A number to type. */
  public enum Figure {
    DIAMETER("ball", "diameter_mm", "mm"),
    BORE("ball", "bore_mm", "mm"),
    VOLTAGE("supply", "voltage_V", "V"),
    POWER("heater", "wanted_power_W", "W"),
    TOLERANCE("heater", "tolerance_pct", ""),
    LEAD_LENGTH("heater", "lead_length_mm", "mm"),
    CABLE_LENGTH("supply", "cable_length_m", "m"),
    GAUGE("sense", "awg", ""),
    GAIN("sense", "gain", ""),
    CONTACT("use", "contact_s", "s"),
    AIR("air", "temperature_C", "°C"),
    HUMIDITY("air", "humidity_pct", ""),
    ALTITUDE("air", "altitude_m", "m"),
    SLOWEST("use", "slowest_m_s", "m/s");

    private final String group;
    private final String key;
    private final String unit;

    Figure(String group, String key, String unit) {
      this.group = group;
      this.key = key;
      this.unit = unit;
    }
  }

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
    for (Pick pick : Pick.values()) {
      picks.put(pick, new SimpleStringProperty(""));
    }
    for (Figure number : Figure.values()) {
      numbers.put(number, new NumberModel(number.unit, words));
    }
  }

  public StringProperty pick(Pick pick) {
    return found(picks, pick);
  }

  public NumberModel number(Figure number) {
    return found(numbers, number);
  }

  private static <K, V> V found(Map<K, V> map, K key) {
    V value = map.get(key);
    if (value == null) {
      throw new IllegalArgumentException("no choice " + key);
    }
    return value;
  }

  /** What there is to pick from; coats are those that suit the metal. */
  List<Option> options(Pick pick, Catalogue parts) {
    return switch (pick) {
      case METAL -> named(parts.metals(), m -> m.label());
      case COAT ->
          named(
              parts.coats().stream()
                  .filter(c -> parts.metal(pick(Pick.METAL).get()).map(c::suits).orElse(true))
                  .toList(),
              c -> c.label());
      case RESISTOR -> named(parts.resistors(), r -> r.label());
      case LEAD -> named(parts.wires(), w -> w.label());
      case SERIES ->
          Arrays.stream(ESeries.values()).map(e -> new Option(e.name(), e.name())).toList();
      case BATTERY -> orNone(named(parts.batteries(), b -> b.label()));
      case CABLE -> orNone(named(parts.wires(), w -> w.label()));
      case THERMOCOUPLE -> named(parts.thermocouples(), t -> t.label());
      case LOGGER -> named(parts.loggers(), l -> l.label());
      case REGULATOR -> worded("design.regulator.", "mains", "linear", "switching");
      case PLACE -> worded("design.place.", "indoors", "narrow", "shade", "sun");
    };
  }

  private List<Option> orNone(List<Option> options) {
    List<Option> all = new ArrayList<>();
    all.add(new Option("", words.text("design.battery.none")));
    all.addAll(options);
    return all;
  }

  private static <T> List<Option> named(List<T> parts, Function<T, Label> label) {
    return parts.stream()
        .map(label)
        .map(l -> new Option(l.id(), l.name()))
        .sorted(java.util.Comparator.comparing(Option::name))
        .toList();
  }

  private List<Option> worded(String prefix, String... ids) {
    return Arrays.stream(ids).map(id -> new Option(id, words.text(prefix + id))).toList();
  }

  /** Shows what a design says. */
  void show(Design design) {
    pick(Pick.METAL).set(design.ball().metal().label().id());
    pick(Pick.COAT).set(design.ball().coat().label().id());
    pick(Pick.RESISTOR).set(design.heater().style().label().id());
    pick(Pick.LEAD).set(design.heater().leads().label().id());
    pick(Pick.SERIES).set(design.heater().series().name());
    pick(Pick.CABLE).set(design.supply().cable().map(c -> c.conductor().label().id()).orElse(""));
    pick(Pick.REGULATOR).set(design.supply().regulator().kind().name().toLowerCase(Locale.ROOT));
    pick(Pick.BATTERY).set(design.supply().battery().map(b -> b.label().id()).orElse(""));
    pick(Pick.THERMOCOUPLE).set(design.sense().type().label().id());
    pick(Pick.LOGGER).set(design.sense().logger().label().id());
    pick(Pick.PLACE).set(design.use().place().name().toLowerCase(Locale.ROOT));
    set(Figure.DIAMETER, MM * design.ball().diameter_m().nominal(), "");
    set(Figure.BORE, MM * design.ball().bore().diameter_m(), "");
    double volts = design.supply().voltage_V().nominal();
    double share = 100 * design.supply().voltage_V().half() / volts;
    set(Figure.VOLTAGE, volts, " ± " + figures(share) + " %");
    set(Figure.POWER, wanted_W(design), "");
    double ohm = design.heater().resistance_ohm().nominal();
    set(Figure.TOLERANCE, 100 * design.heater().resistance_ohm().half() / ohm, "");
    set(Figure.CABLE_LENGTH, design.supply().cable().map(c -> c.length_m()).orElse(0.0), "");
    set(Figure.GAIN, design.sense().gain(), "");
    set(Figure.CONTACT, design.use().contact_s(), "");
    set(Figure.HUMIDITY, 100 * design.air().relativeHumidity(), "");
    set(Figure.LEAD_LENGTH, MM * design.heater().leadLength_m(), "");
    set(Figure.GAUGE, design.sense().gauge().awg(), "");
    set(Figure.AIR, design.air().temperature_K() - Constants.ZERO_C_K, "");
    set(Figure.ALTITUDE, design.use().altitude_m(), "");
    set(Figure.SLOWEST, design.use().slowest_m_s(), "");
  }

  private static double wanted_W(Design design) {
    double volts = design.supply().voltage_V().nominal();
    return volts * volts / design.heater().resistance_ohm().nominal();
  }

  private void set(Figure number, double value, String after) {
    number(number).set(figures(value) + after);
  }

  private static String figures(double value) {
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The change of one pick. */
  List<DesignChange> changes(Pick pick) {
    String id = pick(pick).get();
    DesignChange own =
        id.isEmpty()
            ? DesignChange.without(pick.group, pick.key)
            : DesignChange.text(pick.group, pick.key, id);
    DesignChange bare = DesignChange.without("ball", "plating");
    return switch (pick) {
      // another metal takes its own bare surface, unless one is picked afterwards
      case METAL -> List.of(own, DesignChange.without("ball", "coat"), bare);
      case COAT -> List.of(own, bare);
      // the nearest value of the other series, for the power that the field shows
      case SERIES -> {
        List<DesignChange> all = new ArrayList<>(changes(Figure.POWER));
        all.add(own);
        yield all;
      }
      case CABLE ->
          id.isEmpty()
              ? List.of(own, DesignChange.without("supply", "cable_length_m"))
              : List.of(own);
      default -> List.of(own);
    };
  }

  /** The change of one number; none where it is no number. */
  List<DesignChange> changes(Figure number) {
    Optional<Amount> amount = number(number).amount().filter(a -> a.bound() == Amount.Bound.EXACT);
    if (amount.isEmpty()) {
      return List.of();
    }
    double value = amount.get().value();
    DesignChange own = DesignChange.number(number.group, number.key, value);
    return switch (number) {
      case DIAMETER ->
          List.of(
              own,
              DesignChange.without("ball", "diameter_in"),
              DesignChange.without("ball", "reference_bore_depth_mm"));
      case POWER -> List.of(own, DesignChange.without("heater", "resistance_ohm"));
      case VOLTAGE -> voltage(own, value, amount.get().tolerance());
      case GAUGE ->
          List.of(new DesignChange(number.group, number.key, Optional.empty(), rounded(value)));
      case ALTITUDE -> List.of(own, DesignChange.without("air", "pressure_hPa"));
      case BORE, LEAD_LENGTH, AIR, SLOWEST, TOLERANCE, GAIN, CONTACT, HUMIDITY -> List.of(own);
      // without a cable its length means nothing
      case CABLE_LENGTH -> pick(Pick.CABLE).get().isEmpty() ? List.of() : List.of(own);
    };
  }

  private static OptionalDouble rounded(double value) {
    return OptionalDouble.of(Math.rint(value));
  }

  private static List<DesignChange> voltage(
      DesignChange own, double value, OptionalDouble tolerance) {
    return tolerance.isEmpty()
        ? List.of(own)
        : List.of(
            own,
            DesignChange.number("supply", "tolerance_pct", 100 * tolerance.getAsDouble() / value));
  }
}
