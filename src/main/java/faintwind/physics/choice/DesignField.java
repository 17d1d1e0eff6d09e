package faintwind.physics.choice;

import faintwind.message.Field;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.HeaterDesign;
import faintwind.physics.design.SenseDesign;
import faintwind.physics.design.SupplyDesign;
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
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Every field of a design, in the order of its file and its form: what may be typed, what is usual,
 * how a design shows it. {@link DesignMaking} reads it.
 */
public enum DesignField {
  NAME(Field.text("name"), Design::name),
  METAL(needed("ball.metal", Catalogue::metals, Metal::label), d -> id(d.ball().metal().label())),
  DIAMETER(
      Field.number("ball.diameter_mm", "mm", 5, 60), ball(b -> 1e3 * b.diameter_m().nominal())),
  DIAMETER_IN(Field.text("ball.diameter_in"), d -> ""),
  DIAMETER_TOLERANCE(
      Field.number("ball.diameter_tolerance_mm", "mm", 0, 1).usually("0.05"),
      ball(b -> 1e3 * b.diameter_m().half())),
  COAT(part("ball.coat", Catalogue::coats, Coat::label, ""), d -> id(d.ball().coat().label())),
  BORE(
      Field.number("ball.bore_mm", "mm", 0.3, 100).usually("3.3"),
      ball(b -> 1e3 * b.bore().diameter_m())),
  HEATED_DEPTH(
      Field.number("ball.heated_bore_depth_mm", "mm", 0.1, 100),
      d -> depth(d.ball().bore().heatedDepth_m())),
  REFERENCE_DEPTH(
      Field.number("ball.reference_bore_depth_mm", "mm", 0.1, 100),
      d -> depth(d.ball().bore().referenceDepth_m())),
  REFERENCE_BORE(
      Field.word("ball.reference_bore", List.of("blind", "through")).usually("blind"),
      d -> d.ball().bore().referenceDepth_m().isPresent() ? "" : "through"),
  PLATED_BY(
      Field.word("ball.plating.by", words(PlatingPlan.By.values())).usually("plater"),
      plating(p -> word(p.by()))),
  NICKEL(
      Field.number("ball.plating.nickel_um", "µm", 0, 100).usually("5"),
      plating(p -> n(1e6 * p.nickel().thickness_m()))),
  NICKEL_CURRENT(
      Field.number("ball.plating.nickel_A_dm2", "A/dm²", 0.01, 20).usually("1"),
      plating(p -> n(p.nickel().current_A_m2() / 100))),
  GOLD(
      Field.number("ball.plating.gold_um", "µm", 0, 10).usually("0.5"),
      plating(p -> n(1e6 * p.gold().thickness_m()))),
  GOLD_CURRENT(
      Field.number("ball.plating.gold_A_dm2", "A/dm²", 0.01, 5).usually("0.3"),
      plating(p -> n(p.gold().current_A_m2() / 100))),
  ROOM(
      Field.number("ball.plating.room_m3", "m³", 1, 10000).usually("30"),
      plating(p -> n(p.room_m3()))),
  RESISTOR(
      part("heater.resistor", Catalogue::resistors, ResistorStyle::label, "metal-film-half-watt"),
      d -> id(d.heater().style().label())),
  SERIES(
      Field.word("heater.series", Arrays.stream(ESeries.values()).map(Enum::name).toList())
          .usually("E24"),
      d -> d.heater().series().name()),
  RESISTANCE(
      Field.number("heater.resistance_ohm", "Ω", 0.1, 1e6),
      d -> d.heater().wanted_W().isPresent() ? "" : n(d.heater().resistance_ohm().nominal())),
  POWER(
      Field.number("heater.wanted_power_W", "W", 0.001, 5).usually("0.25"),
      d -> n(d.heater().wanted_W())),
  TOLERANCE(
      Field.number("heater.tolerance_pct", "%", 0, 20), heater(h -> percent(h.resistance_ohm()))),
  LEAD(
      part("heater.lead_wire", Catalogue::wires, Wire::label, "copper-36awg"),
      d -> id(d.heater().leads().label())),
  LEAD_LENGTH(
      Field.number("heater.lead_length_mm", "mm", 0, 2000).usually("60"),
      heater(h -> 1e3 * h.leadLength_m())),
  LEAD_COAT(
      Field.number("heater.coat_mm", "mm", 0, 1).usually("0.05"), heater(h -> 1e3 * h.coat_m())),
  VOLTAGE(
      Field.number("supply.voltage_V", "V", 0.5, 60).needed(),
      d -> n(d.supply().voltage_V().nominal())),
  VOLTAGE_TOLERANCE(
      Field.number("supply.tolerance_pct", "%", 0, 20).usually("5"),
      d -> n(percent(d.supply().voltage_V()))),
  REGULATOR(
      Field.word("supply.regulator", words(SupplyDesign.Kind.values())).usually("mains"),
      d -> word(d.supply().regulator().kind())),
  DROPOUT(Field.number("supply.dropout_V", "V", 0, 10), regulator(r -> r.dropout_V())),
  OWN_CURRENT(Field.number("supply.own_current_mA", "mA", 0, 100), regulator(r -> 1e3 * r.own_A())),
  EFFICIENCY(
      Field.number("supply.efficiency_pct", "%", 10, 100).usually("85"),
      d ->
          d.supply().regulator().kind() == SupplyDesign.Kind.SWITCHING
              ? n(100 * d.supply().regulator().efficiency())
              : ""),
  CABLE(
      part("supply.cable", Catalogue::wires, Wire::label, ""),
      d -> d.supply().cable().map(c -> id(c.conductor().label())).orElse("")),
  CABLE_LENGTH(
      Field.number("supply.cable_length_m", "m", 0, 500).usually("2"),
      d -> d.supply().cable().map(c -> n(c.length_m())).orElse("")),
  BATTERY(
      part("supply.battery", Catalogue::batteries, BatteryType::label, ""),
      d -> d.supply().battery().map(b -> id(b.label())).orElse("")),
  THERMOCOUPLE(
      needed("sense.thermocouple", Catalogue::thermocouples, DesignField::letter),
      d -> d.sense().type().function().letter()),
  GAUGE(Field.whole("sense.awg", 10, 44).usually("30"), sense(s -> s.gauge().awg())),
  FREE_LENGTH(
      Field.number("sense.free_length_mm", "mm", 0, 2000).usually("80"),
      sense(s -> 1e3 * s.freeLength_m())),
  LOOP_LENGTH(
      Field.number("sense.loop_length_m", "m", 0.01, 500).usually("0.5"),
      sense(SenseDesign::loopLength_m)),
  LOGGER(
      part("sense.logger", Catalogue::loggers, LoggerProfile::label, ""),
      d -> isOwn(d) ? "" : id(d.sense().logger().label())),
  LOGGER_NAME(Field.text("sense.logger.name"), own(l -> l.label().name())),
  LOGGER_LOW(
      Field.number("sense.logger.range_low_mV", "mV", -1e6, 1e6), own(l -> n(1e3 * l.low_V()))),
  LOGGER_HIGH(
      Field.number("sense.logger.range_high_mV", "mV", -1e6, 1e6), own(l -> n(1e3 * l.high_V()))),
  LOGGER_BITS(Field.whole("sense.logger.bits", 6, 32), own(l -> n(l.bits()))),
  LOGGER_NOISE(Field.number("sense.logger.noise_uV", "µV", 0, 1e6), own(l -> n(1e6 * l.noise_V()))),
  LOGGER_OFFSET(
      Field.number("sense.logger.offset_uV", "µV", 0, 1e6), own(l -> n(1e6 * l.offset_V()))),
  GAIN(Field.number("sense.gain", "", 1e-3, 1e6).usually("1"), sense(SenseDesign::gain)),
  AVERAGING(
      Field.number("sense.averaging_s", "s", 0, 3600).usually("30"),
      sense(SenseDesign::averaging_s)),
  AIR(
      Field.number("air.temperature_C", "°C", -30, 60).usually("20"),
      d -> n(d.air().temperature_K() - Constants.ZERO_C_K)),
  PRESSURE(Field.number("air.pressure_hPa", "hPa", 300, 1150), d -> n(d.air().pressure_Pa() / 100)),
  ALTITUDE(Field.number("air.altitude_m", "m", -500, 9000).usually("0"), use(Use::altitude_m)),
  HUMIDITY(
      Field.number("air.humidity_pct", "%", 0, 100).usually("50"),
      d -> n(100 * d.air().relativeHumidity())),
  PLACE(
      Field.word("use.place", words(Use.Place.values())).usually("indoors"),
      d -> word(d.use().place())),
  CONTACT(Field.number("use.contact_s", "s", 0, 1e5).usually("10"), use(Use::contact_s)),
  SLOWEST(
      Field.number("use.slowest_m_s", "m/s", 0.001, 100).usually("0.05"), use(Use::slowest_m_s)),
  FASTEST(Field.number("use.fastest_m_s", "m/s", 0.001, 1000).usually("3"), use(Use::fastest_m_s));

  /** What is said of balls that are plated. */
  static final List<DesignField> PLATING =
      List.of(PLATED_BY, NICKEL, NICKEL_CURRENT, GOLD, GOLD_CURRENT, ROOM);

  /** What a person says who describes a logger. */
  static final List<DesignField> OWN_LOGGER =
      List.of(LOGGER_NAME, LOGGER_LOW, LOGGER_HIGH, LOGGER_BITS, LOGGER_NOISE, LOGGER_OFFSET);

  private final Field field;
  private final Function<Catalogue, List<Label>> parts;
  private final Function<Design, String> shown;

  /** A part to pick, or nothing but its field. */
  private record Picked(Field field, Function<Catalogue, List<Label>> parts) {}

  DesignField(Picked picked, Function<Design, String> shown) {
    this.field = picked.field();
    this.parts = picked.parts();
    this.shown = shown;
  }

  DesignField(Field field, Function<Design, String> shown) {
    this(new Picked(field, catalogue -> List.of()), shown);
  }

  public Field field() {
    return field;
  }

  /** The parts that it may name; none where it names no part. */
  public List<Label> parts(Catalogue catalogue) {
    return parts.apply(catalogue);
  }

  /** What a design says of it, as it is typed; empty where it says nothing. */
  public String of(Design design) {
    return shown.apply(design);
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

  private static <T> Picked part(
      String id, Function<Catalogue, List<T>> parts, Function<T, Label> label, String usual) {
    return new Picked(
        Field.text(id).usually(usual), c -> parts.apply(c).stream().map(label).toList());
  }

  private static <T> Picked needed(
      String id, Function<Catalogue, List<T>> parts, Function<T, Label> label) {
    Picked picked = part(id, parts, label, "");
    return new Picked(picked.field().needed(), picked.parts());
  }

  private static Function<Design, String> ball(Function<BallDesign, Double> value) {
    return d -> n(value.apply(d.ball()));
  }

  private static Function<Design, String> heater(Function<HeaterDesign, Double> value) {
    return d -> n(value.apply(d.heater()));
  }

  private static Function<Design, String> sense(Function<SenseDesign, Number> value) {
    return d -> n(value.apply(d.sense()).doubleValue());
  }

  private static Function<Design, String> use(Function<Use, Double> value) {
    return d -> n(value.apply(d.use()));
  }

  private static Function<Design, String> plating(Function<PlatingPlan, String> text) {
    return d -> d.ball().plating().map(text).orElse("");
  }

  private static Function<Design, String> regulator(
      Function<SupplyDesign.Regulator, Double> value) {
    return d ->
        d.supply().regulator().kind() == SupplyDesign.Kind.MAINS
            ? ""
            : n(value.apply(d.supply().regulator()));
  }

  private static Function<Design, String> own(Function<LoggerProfile, String> text) {
    return d -> isOwn(d) ? text.apply(d.sense().logger()) : "";
  }

  private static boolean isOwn(Design design) {
    return design.sense().logger().isOwn();
  }

  /** A type is known by its letter. */
  private static Label letter(ThermocoupleType type) {
    return new Label(type.function().letter(), type.label().name(), type.label().source());
  }

  private static String depth(OptionalDouble depth_m) {
    return depth_m.isPresent() ? n(1e3 * depth_m.getAsDouble()) : "";
  }

  private static double percent(Interval value) {
    return 100 * value.half() / value.nominal();
  }

  private static String n(OptionalDouble value) {
    return value.isPresent() ? n(value.getAsDouble()) : "";
  }

  private static String n(double value) {
    return Field.plain(value);
  }

  private static String id(Label label) {
    return label.id();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static List<String> words(Enum<?>... values) {
    return Arrays.stream(values).map(DesignField::word).toList();
  }
}
