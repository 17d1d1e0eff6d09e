package faintwind.files.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.files.NumberCell;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.StandardAtmosphere;
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
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the JSON of a design, which its schema has passed, into a design in SI units. */
final class DesignReading {
  private static final double MM = 1e-3;
  private static final double INCH_M = 0.0254;
  private static final double A_DM2 = 100; // A/m²
  private static final double WEATHER = 0.08; // 870 to 1085 hPa were seen at sea level
  private static final String STYLE = "metal-film-half-watt";

  private final ObjectNode root;
  private final DesignParts parts;

  DesignReading(ObjectNode root, Catalogue catalogue, Where where) {
    this.root = root;
    this.parts = new DesignParts(catalogue, where);
  }

  /** What was assumed, as one note. */
  List<Problem> notes() {
    return parts.notes();
  }

  Checked<Design> design() {
    DesignKeys air = keys("air");
    DesignKeys use = keys("use");
    double altitude_m =
        air.has("pressure_hPa")
            ? air.optional("altitude_m").orElse(0)
            : air.number("altitude_m", 0);
    pressureAndAltitude(air);
    Optional<BallDesign> ball = ball(keys("ball"));
    Optional<HeaterDesign> heater = heater(keys("heater"), supplyVoltage());
    SupplyDesign supply = supply(keys("supply"));
    Optional<SenseDesign> sense = sense(keys("sense"));
    if (!parts.problems().isEmpty()) {
      return Checked.refused(parts.problems());
    }
    return Checked.ok(
        new Design(
            root.path("name").asText("design"),
            ball.orElseThrow(),
            heater.orElseThrow(),
            supply,
            sense.orElseThrow(),
            airState(air, altitude_m),
            use(use, altitude_m)));
  }

  private DesignKeys keys(String group) {
    return new DesignKeys(root.path(group), group, parts);
  }

  /** A pressure that no weather makes at the altitude: one of the two is wrong. */
  private void pressureAndAltitude(DesignKeys air) {
    if (!air.has("pressure_hPa") || !air.has("altitude_m")) {
      return;
    }
    double altitude_m = air.number("altitude_m", 0);
    double pressure_hPa = air.number("pressure_hPa", 0);
    double standard_hPa = StandardAtmosphere.pressure_Pa(altitude_m) / 100;
    if (Math.abs(pressure_hPa / standard_hPa - 1) > WEATHER) {
      parts.refuse(
          Problem.error(
              "design.pressure-contradicts-altitude",
              air.where("pressure_hPa"),
              NumberCell.shown(pressure_hPa),
              NumberCell.shown(altitude_m),
              String.valueOf(Math.round(standard_hPa))));
    }
  }

  private static AirState airState(DesignKeys air, double altitude_m) {
    double standard_hPa = StandardAtmosphere.pressure_Pa(altitude_m) / 100;
    return new AirState(
        air.number("temperature_C", 20) + Constants.ZERO_C_K,
        100 * air.optional("pressure_hPa").orElse(standard_hPa),
        air.number("humidity_pct", 50) / 100);
  }

  private static Use use(DesignKeys use, double altitude_m) {
    return new Use(
        Use.Place.valueOf(use.text("place", "indoors").toUpperCase(Locale.ROOT)),
        use.number("contact_s", 10),
        use.number("slowest_m_s", 0.05),
        use.number("fastest_m_s", 3),
        altitude_m);
  }

  private Optional<BallDesign> ball(DesignKeys keys) {
    Optional<Metal> metal = parts.metal(keys, keys.text("metal", ""));
    OptionalDouble diameter = diameter_m(keys);
    double tolerance = keys.number("diameter_tolerance_mm", 0.05) * MM;
    String bare = metal.map(m -> DesignDefaults.coat(m.label().id())).orElse("");
    Optional<Coat> coat = parts.coat(keys, keys.text("coat", bare));
    double bore = keys.number("bore_mm", 3.3) * MM;
    if (metal.isEmpty() || coat.isEmpty() || diameter.isEmpty()) {
      return Optional.empty();
    }
    double d = diameter.getAsDouble();
    OptionalDouble blind =
        keys.optionalText("reference_bore").filter("through"::equals).isPresent()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                keys.number("reference_bore_depth_mm", Math.round(7.5 * d / MM) / 10.0) * MM);
    OptionalDouble heated = keys.optional("heated_bore_depth_mm");
    return Optional.of(
        new BallDesign(
            metal.get(),
            coat.get(),
            new Interval(d - tolerance, d, d + tolerance),
            new BallDesign.Bore(
                bore,
                heated.isPresent() ? OptionalDouble.of(heated.getAsDouble() * MM) : heated,
                blind),
            plating(keys, coat.get())));
  }

  private OptionalDouble diameter_m(DesignKeys keys) {
    OptionalDouble mm = keys.optional("diameter_mm");
    Optional<String> inch = keys.optionalText("diameter_in");
    if (mm.isPresent() == inch.isPresent()) {
      String found = mm.isPresent() ? "diameter_mm, diameter_in" : "";
      parts.refuse(Problem.error("design.one-diameter", keys.where("diameter_mm"), found));
      return OptionalDouble.empty();
    }
    if (mm.isPresent()) {
      return OptionalDouble.of(mm.getAsDouble() * MM);
    }
    String[] fraction = inch.orElseThrow().split("/", -1);
    double below = fraction.length == 2 ? Double.parseDouble(fraction[1]) : 1;
    double d = Double.parseDouble(fraction[0]) / below * INCH_M;
    if (!(d >= 5 * MM && d <= 60 * MM)) {
      parts.refuse(
          Problem.error(
              "design.diameter-outside", keys.where("diameter_in"), inch.get(), "5", "60"));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(d);
  }

  private Optional<PlatingPlan> plating(DesignKeys ball, Coat coat) {
    if (coat.kind() != Coat.Kind.PLATED && !ball.has("plating")) {
      return Optional.empty();
    }
    DesignKeys keys = ball.inside("plating");
    double gold = coat.label().id().contains("gold") ? 0.5 : 0;
    return Optional.of(
        new PlatingPlan(
            PlatingPlan.By.valueOf(keys.text("by", "plater").toUpperCase(Locale.ROOT)),
            new PlatingPlan.Layer(
                keys.number("nickel_um", 5) * 1e-6, keys.number("nickel_A_dm2", 1) * A_DM2),
            new PlatingPlan.Layer(
                keys.number("gold_um", gold) * 1e-6, keys.number("gold_A_dm2", 0.3) * A_DM2),
            keys.number("room_m3", 30)));
  }

  private double supplyVoltage() {
    return root.path("supply").path("voltage_V").asDouble();
  }

  private Optional<HeaterDesign> heater(DesignKeys keys, double voltage_V) {
    Optional<ResistorStyle> style = parts.resistor(keys, keys.text("resistor", STYLE));
    Optional<Wire> leads = parts.wire("lead_wire", keys, keys.text("lead_wire", "copper-36awg"));
    ESeries series = ESeries.valueOf(keys.text("series", "E24"));
    OptionalDouble given = keys.optional("resistance_ohm");
    if (given.isPresent() && keys.has("wanted_power_W")) {
      parts.refuse(Problem.error("design.resistance-and-power", keys.where("wanted_power_W"), ""));
    }
    double wanted = given.isPresent() ? 0.25 : keys.number("wanted_power_W", 0.25);
    double ohm = given.orElse(series.nearest_ohm(voltage_V * voltage_V / wanted));
    double tolerance = keys.number("tolerance_pct", 100 * series.tolerance()) / 100;
    double length = keys.number("lead_length_mm", 60) * MM;
    double coat = keys.number("coat_mm", 0.05) * MM;
    if (style.isEmpty() || leads.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new HeaterDesign(
            series, Interval.share(ohm, tolerance), style.get(), leads.get(), length, coat));
  }

  private SupplyDesign supply(DesignKeys keys) {
    SupplyDesign.Kind kind =
        SupplyDesign.Kind.valueOf(keys.text("regulator", "mains").toUpperCase(Locale.ROOT));
    SupplyDesign.Regulator regulator =
        switch (kind) {
          case LINEAR -> regulator(keys, kind, 2, 6);
          case SWITCHING -> regulator(keys, kind, 0.5, 1);
          case MAINS -> new SupplyDesign.Regulator(kind, 0, 0, 1);
        };
    Optional<Wire> cable = keys.optionalText("cable").flatMap(id -> parts.wire("cable", keys, id));
    double length = cable.isPresent() ? keys.number("cable_length_m", 2) : 0;
    Optional<BatteryType> battery =
        keys.optionalText("battery").flatMap(id -> parts.battery(keys, id));
    return new SupplyDesign(
        Interval.share(keys.number("voltage_V", 5), keys.number("tolerance_pct", 5) / 100),
        regulator,
        cable.map(w -> new SupplyDesign.Cable(w, length)),
        battery);
  }

  private static SupplyDesign.Regulator regulator(
      DesignKeys keys, SupplyDesign.Kind kind, double dropout_V, double own_mA) {
    double efficiency =
        kind == SupplyDesign.Kind.SWITCHING ? keys.number("efficiency_pct", 85) / 100 : 1;
    return new SupplyDesign.Regulator(
        kind,
        keys.number("dropout_V", dropout_V),
        keys.number("own_current_mA", own_mA) * 1e-3,
        efficiency);
  }

  private Optional<SenseDesign> sense(DesignKeys keys) {
    Optional<ThermocoupleType> type =
        parts.thermocouple(keys, keys.text("thermocouple", "K").toLowerCase(Locale.ROOT));
    int awg = (int) keys.number("awg", 30);
    Optional<LoggerProfile> logger = logger(keys);
    double free = keys.number("free_length_mm", 80) * MM;
    double loop = keys.number("loop_length_m", 0.5);
    double gain = keys.number("gain", 1);
    double averaging = keys.number("averaging_s", 30);
    Optional<ThermocoupleType.Gauge> gauge = type.flatMap(t -> t.gauge(awg));
    if (type.isPresent() && gauge.isEmpty()) {
      parts.refuse(Problem.error("design.gauge-unknown", keys.where("awg"), String.valueOf(awg)));
    }
    if (gauge.isEmpty() || logger.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SenseDesign(
            type.orElseThrow(), gauge.get(), free, loop, logger.get(), gain, averaging));
  }

  private Optional<LoggerProfile> logger(DesignKeys keys) {
    JsonNode node = keys.node("logger");
    if (node.isTextual()) {
      return parts.logger(keys, node.asText());
    }
    double low = node.get("range_low_mV").asDouble();
    double high = node.get("range_high_mV").asDouble();
    if (low >= high) {
      parts.refuse(
          Problem.error(
              "asset.order",
              keys.where("logger.range_low_mV"),
              String.valueOf(low),
              "range_high_mV",
              String.valueOf(high)));
      return Optional.empty();
    }
    Label label = new Label("own", node.get("name").asText(), "as entered in the design");
    return Optional.of(
        new LoggerProfile(
            label,
            low * 1e-3,
            high * 1e-3,
            node.get("bits").asInt(),
            node.get("noise_uV").asDouble() * 1e-6,
            node.get("offset_uV").asDouble() * 1e-6));
  }
}
