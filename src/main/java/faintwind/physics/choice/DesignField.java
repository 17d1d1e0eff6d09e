package faintwind.physics.choice;

import faintwind.message.Field;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.design.SupplyDesign.Kind;
import faintwind.physics.design.Use;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Coat;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.Label;
import faintwind.physics.part.LoggerProfile;
import faintwind.physics.part.Metal;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.part.Wire;
import faintwind.physics.plating.PlatingPlan;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Every field of a design, in the order of its file and its form: what may be typed, what is usual,
 * how a design shows it. {@link DesignMaking} reads it.
 */
@SuppressWarnings("ImmutableEnumChecker") // its field is a record, its function has no state
public enum DesignField {
  NAME(Field.text("name"), Design::name),
  METAL(Field.text("ball.metal").needed(), d -> d.ball().metal().label().id()),
  DIAMETER(number("ball.diameter_mm", 5, 60, ""), ball(b -> 1e3 * b.diameter_m().nominal())),
  DIAMETER_IN(Field.text("ball.diameter_in"), d -> ""),
  DIAMETER_TOLERANCE(
      number("ball.diameter_tolerance_mm", 0, 1, "0.05"), ball(b -> 1e3 * b.diameter_m().half())),
  COAT(Field.text("ball.coat"), d -> d.ball().coat().label().id()),
  BORE(number("ball.bore_mm", 0.3, 100, "3.3"), ball(b -> 1e3 * b.bore().diameter_m())),
  HEATED_DEPTH(
      number("ball.heated_bore_depth_mm", 0.1, 100, ""), d -> mm(d.ball().bore().heatedDepth_m())),
  REFERENCE_DEPTH(
      number("ball.reference_bore_depth_mm", 0.1, 100, ""),
      d -> mm(d.ball().bore().referenceDepth_m())),
  REFERENCE_BORE(
      Field.word("ball.reference_bore", Hole.values()).usually("blind"),
      d -> d.ball().bore().referenceDepth_m().isPresent() ? "" : "through"),
  PLATED_BY(
      Field.word("ball.plating.by", PlatingPlan.By.values()).usually("plater"),
      plating(p -> Field.word(p.by()))),
  NICKEL(
      number("ball.plating.nickel_um", 0, 100, "5"),
      plating(p -> n(1e6 * p.nickel().thickness_m()))),
  NICKEL_CURRENT(
      number("ball.plating.nickel_A_dm2", 0.01, 20, "1"),
      plating(p -> n(p.nickel().current_A_m2() / 100))),
  GOLD(number("ball.plating.gold_um", 0, 10, "0.5"), plating(p -> n(1e6 * p.gold().thickness_m()))),
  GOLD_CURRENT(
      number("ball.plating.gold_A_dm2", 0.01, 5, "0.3"),
      plating(p -> n(p.gold().current_A_m2() / 100))),
  ROOM(number("ball.plating.room_m3", 1, 10000, "30"), plating(p -> n(p.room_m3()))),
  RESISTOR(
      Field.text("heater.resistor").usually("metal-film-half-watt"),
      d -> d.heater().style().label().id()),
  SERIES(
      new Field("heater.series", "", Optional.empty(), ESeries.names(), "E24", false),
      d -> d.heater().series().name()),
  RESISTANCE(
      number("heater.resistance_ohm", 0.1, 1e6, ""),
      d -> d.heater().wanted_W().isPresent() ? "" : n(d.heater().resistance_ohm().nominal())),
  POWER(number("heater.wanted_power_W", 0.001, 5, "0.25"), d -> n(d.heater().wanted_W())),
  TOLERANCE(number("heater.tolerance_pct", 0, 20, ""), d -> percent(d.heater().resistance_ohm())),
  LEAD(
      Field.text("heater.lead_wire").usually("copper-36awg"), d -> d.heater().leads().label().id()),
  LEAD_LENGTH(
      number("heater.lead_length_mm", 0, 2000, "60"), d -> n(1e3 * d.heater().leadLength_m())),
  LEAD_COAT(number("heater.coat_mm", 0, 1, "0.05"), d -> n(1e3 * d.heater().coat_m())),
  VOLTAGE(
      number("supply.voltage_V", 0.5, 60, "").needed(), d -> n(d.supply().voltage_V().nominal())),
  VOLTAGE_TOLERANCE(
      number("supply.tolerance_pct", 0, 20, "5"), d -> percent(d.supply().voltage_V())),
  REGULATOR(
      Field.word("supply.regulator", Kind.values()).usually("mains"),
      d -> Field.word(d.supply().regulator().kind())),
  DROPOUT(number("supply.dropout_V", 0, 10, ""), held(false, r -> r.dropout_V())),
  OWN_CURRENT(number("supply.own_current_mA", 0, 100, ""), held(false, r -> 1e3 * r.own_A())),
  EFFICIENCY(number("supply.efficiency_pct", 10, 100, "85"), held(true, r -> 100 * r.efficiency())),
  CABLE(
      Field.text("supply.cable"),
      d -> d.supply().cable().map(c -> c.conductor().label().id()).orElse("")),
  CABLE_LENGTH(
      number("supply.cable_length_m", 0, 500, "2"),
      d -> d.supply().cable().map(c -> n(c.length_m())).orElse("")),
  BATTERY(
      Field.text("supply.battery"), d -> d.supply().battery().map(b -> b.label().id()).orElse("")),
  THERMOCOUPLE(
      Field.text("sense.thermocouple").needed(), d -> d.sense().type().function().letter()),
  GAUGE(Field.whole("sense.awg", 10, 44).usually("30"), d -> n(d.sense().gauge().awg())),
  FREE_LENGTH(
      number("sense.free_length_mm", 0, 2000, "80"), d -> n(1e3 * d.sense().lengths().free_m())),
  LOOP_LENGTH(
      number("sense.loop_length_m", 0.01, 500, "0.5"), d -> n(d.sense().lengths().loop_m())),
  BETWEEN_LENGTH(
      number("sense.between_length_mm", 10, 5000, "150"),
      d -> n(1e3 * d.sense().lengths().between_m())),
  LOGGER(
      Field.text("sense.logger"),
      d -> d.sense().logger().isOwn() ? "" : d.sense().logger().label().id()),
  LOGGER_NAME(Field.text("sense.logger.name"), own(l -> l.label().name())),
  LOGGER_LOW(number("sense.logger.range_low_mV", -1e6, 1e6, ""), own(l -> n(1e3 * l.low_V()))),
  LOGGER_HIGH(number("sense.logger.range_high_mV", -1e6, 1e6, ""), own(l -> n(1e3 * l.high_V()))),
  LOGGER_BITS(Field.whole("sense.logger.bits", 6, 32), own(l -> n(l.bits()))),
  LOGGER_NOISE(number("sense.logger.noise_uV", 0, 1e6, ""), own(l -> n(1e6 * l.noise_V()))),
  LOGGER_OFFSET(number("sense.logger.offset_uV", 0, 1e6, ""), own(l -> n(1e6 * l.offset_V()))),
  GAIN(number("sense.gain", 1e-3, 1e6, "1"), d -> n(d.sense().gain())),
  AVERAGING(number("sense.averaging_s", 0, 3600, "30"), d -> n(d.sense().averaging_s())),
  AIR(
      number("air.temperature_C", -30, 60, "20"),
      d -> n(d.air().temperature_K() - Constants.ZERO_C_K)),
  PRESSURE(number("air.pressure_hPa", 300, 1150, ""), d -> n(d.air().pressure_Pa() / 100)),
  ALTITUDE(number("air.altitude_m", -500, 9000, "0"), d -> n(d.use().altitude_m())),
  HUMIDITY(number("air.humidity_pct", 0, 100, "50"), d -> n(100 * d.air().relativeHumidity())),
  PLACE(
      Field.word("use.place", Use.Place.values()).usually("indoors"),
      d -> Field.word(d.use().place())),
  CONTACT(number("use.contact_s", 0, 1e5, "10"), d -> n(d.use().contact_s())),
  SLOWEST(number("use.slowest_m_s", 0.001, 100, "0.05"), d -> n(d.use().slowest_m_s())),
  FASTEST(number("use.fastest_m_s", 0.001, 1000, "3"), d -> n(d.use().fastest_m_s()));

  /** How a hole ends. */
  private enum Hole {
    BLIND,
    THROUGH
  }

  private final Field field;
  private final Function<Design, String> text;

  DesignField(Field field, Function<Design, String> text) {
    this.field = field;
    this.text = text;
  }

  public Field field() {
    return field;
  }

  /** The parts that it may name; none where it names no part. */
  public List<Label> parts(Catalogue parts) {
    return switch (this) {
      case METAL -> labels(parts.metals(), Metal::label);
      case COAT -> labels(parts.coats(), Coat::label);
      case RESISTOR -> labels(parts.resistors(), ResistorStyle::label);
      case LEAD, CABLE -> labels(parts.wires(), Wire::label);
      case BATTERY -> labels(parts.batteries(), BatteryType::label);
      case THERMOCOUPLE -> labels(parts.thermocouples(), DesignField::letter);
      case LOGGER -> labels(parts.loggers(), LoggerProfile::label);
      default -> List.of();
    };
  }

  private static <T> List<Label> labels(List<T> parts, Function<T, Label> label) {
    return parts.stream().map(label).toList();
  }

  /** What a design says of it, as it is typed; empty where it says nothing. */
  public String of(Design design) {
    return text.apply(design);
  }

  /** The field of an id; empty where there is none. */
  public static Optional<DesignField> named(String id) {
    return Arrays.stream(values()).filter(f -> f.field.id().equals(id)).findFirst();
  }

  /** All that a design says, by id. */
  public static Map<String, String> texts(Design design) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (DesignField each : values()) {
      String text = each.of(design);
      if (!text.isEmpty()) {
        texts.put(each.field.id(), text);
      }
    }
    return texts;
  }

  private static Field number(String id, double least, double most, String usual) {
    return Field.number(id, least, most).usually(usual);
  }

  private static Function<Design, String> ball(ToDoubleFunction<BallDesign> value) {
    return d -> n(value.applyAsDouble(d.ball()));
  }

  private static Function<Design, String> plating(Function<PlatingPlan, String> text) {
    return d -> d.ball().plating().map(text).orElse("");
  }

  /** A number of a regulator, where there is one that has it. */
  private static Function<Design, String> held(
      boolean switching, ToDoubleFunction<SupplyDesign.Regulator> value) {
    return d -> {
      Kind kind = d.supply().regulator().kind();
      boolean has = kind == Kind.SWITCHING || (kind == Kind.LINEAR && !switching);
      return has ? n(value.applyAsDouble(d.supply().regulator())) : "";
    };
  }

  private static Function<Design, String> own(Function<LoggerProfile, String> text) {
    return d -> d.sense().logger().isOwn() ? text.apply(d.sense().logger()) : "";
  }

  /** A type is known by its letter. */
  private static Label letter(ThermocoupleType type) {
    return new Label(type.function().letter(), type.label().name(), type.label().source());
  }

  private static String mm(OptionalDouble length_m) {
    return length_m.isPresent() ? n(1e3 * length_m.getAsDouble()) : "";
  }

  private static String percent(Interval value) {
    return n(100 * value.half() / value.nominal());
  }

  private static String n(OptionalDouble value) {
    return value.isPresent() ? n(value.getAsDouble()) : "";
  }

  private static String n(double value) {
    return Field.plain(value);
  }
}
