package faintwind.physics.choice;

import faintwind.message.FieldTexts;
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
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Coat;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.LoggerProfile;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.plating.PlatingPlan;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes a design, in SI units, of texts that {@link DesignTexts} has passed. */
final class DesignMaking {
  private static final double MM = 1e-3;
  private static final double INCH_M = 0.0254;
  private static final double A_DM2 = 100; // A/m²

  private final FieldTexts texts;
  private final Catalogue parts;

  DesignMaking(FieldTexts texts, Catalogue parts) {
    this.texts = texts;
    this.parts = parts;
  }

  Design design() {
    double altitude_m =
        has(DesignField.PRESSURE)
            ? texts.optional(DesignField.ALTITUDE.field()).orElse(0)
            : number(DesignField.ALTITUDE);
    return new Design(
        texts.entry(DesignField.NAME.field()).orElse("design"),
        ball(),
        heater(),
        supply(),
        sense(),
        air(altitude_m),
        use(altitude_m));
  }

  private BallDesign ball() {
    String metal = text(DesignField.METAL);
    double d = diameter_m(texts).orElseThrow();
    double tolerance = number(DesignField.DIAMETER_TOLERANCE) * MM;
    Coat coat = parts.coat(texts.text(DesignField.COAT.field(), bareCoat(metal))).orElseThrow();
    double bore = number(DesignField.BORE) * MM;
    boolean through =
        texts.entry(DesignField.REFERENCE_BORE.field()).filter("through"::equals).isPresent();
    OptionalDouble blind =
        through
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                texts.number(DesignField.REFERENCE_DEPTH.field(), Math.round(7.5 * d / MM) / 10.0)
                    * MM);
    return new BallDesign(
        parts.metal(metal).orElseThrow(),
        coat,
        new Interval(d - tolerance, d, d + tolerance),
        new BallDesign.Bore(bore, texts.optional(DesignField.HEATED_DEPTH.field(), MM), blind),
        plating(coat));
  }

  /** Surface of a metal that nothing is given about: polished, as it comes from making. */
  static String bareCoat(String metal) {
    if (metal.startsWith("copper")) {
      return "bare-polished-copper";
    }
    return metal.startsWith("brass") ? "bare-brass" : "bare-polished-aluminium";
  }

  /** The diameter, in whichever measure it was given; empty where in none. */
  static OptionalDouble diameter_m(FieldTexts texts) {
    OptionalDouble mm = texts.optional(DesignField.DIAMETER.field(), MM);
    Optional<String> inch = texts.entry(DesignField.DIAMETER_IN.field());
    if (mm.isPresent() || inch.isEmpty()) {
      return mm;
    }
    String[] fraction = inch.get().split("/", -1);
    double below = fraction.length == 2 ? Double.parseDouble(fraction[1]) : 1;
    return OptionalDouble.of(Double.parseDouble(fraction[0]) / below * INCH_M);
  }

  private Optional<PlatingPlan> plating(Coat coat) {
    if (coat.kind() != Coat.Kind.PLATED && PartFields.PLATING.stream().noneMatch(this::has)) {
      return Optional.empty();
    }
    double gold = coat.label().id().contains("gold") ? 0.5 : 0;
    return Optional.of(
        new PlatingPlan(
            texts.word(DesignField.PLATED_BY.field(), PlatingPlan.By.class),
            new PlatingPlan.Layer(
                number(DesignField.NICKEL) * 1e-6, number(DesignField.NICKEL_CURRENT) * A_DM2),
            new PlatingPlan.Layer(
                either(DesignField.GOLD, gold) * 1e-6, number(DesignField.GOLD_CURRENT) * A_DM2),
            number(DesignField.ROOM)));
  }

  private HeaterDesign heater() {
    var style = parts.resistor(text(DesignField.RESISTOR)).orElseThrow();
    var leads = parts.wire(text(DesignField.LEAD)).orElseThrow();
    ESeries series = ESeries.valueOf(text(DesignField.SERIES));
    OptionalDouble given = texts.optional(DesignField.RESISTANCE.field());
    double volts = number(DesignField.VOLTAGE);
    OptionalDouble wanted_W =
        given.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(number(DesignField.POWER));
    double ohm = given.orElse(series.nearest_ohm(volts * volts / wanted_W.orElse(1)));
    double tolerance = either(DesignField.TOLERANCE, 100 * series.tolerance()) / 100;
    return new HeaterDesign(
        series,
        wanted_W,
        Interval.share(ohm, tolerance),
        style,
        leads,
        number(DesignField.LEAD_LENGTH) * MM,
        number(DesignField.LEAD_COAT) * MM);
  }

  private SupplyDesign supply() {
    var kind = texts.word(DesignField.REGULATOR.field(), SupplyDesign.Kind.class);
    SupplyDesign.Regulator regulator =
        switch (kind) {
          case LINEAR -> regulator(kind, 2, 6);
          case SWITCHING -> regulator(kind, 0.5, 1);
          case MAINS -> new SupplyDesign.Regulator(kind, 0, 0, 1);
        };
    return new SupplyDesign(
        Interval.share(number(DesignField.VOLTAGE), number(DesignField.VOLTAGE_TOLERANCE) / 100),
        regulator,
        texts
            .entry(DesignField.CABLE.field())
            .flatMap(parts::wire)
            .map(w -> new SupplyDesign.Cable(w, number(DesignField.CABLE_LENGTH))),
        texts.entry(DesignField.BATTERY.field()).flatMap(parts::battery));
  }

  private SupplyDesign.Regulator regulator(
      SupplyDesign.Kind kind, double dropout_V, double own_mA) {
    double efficiency =
        kind == SupplyDesign.Kind.SWITCHING ? number(DesignField.EFFICIENCY) / 100 : 1;
    return new SupplyDesign.Regulator(
        kind,
        either(DesignField.DROPOUT, dropout_V),
        either(DesignField.OWN_CURRENT, own_mA) * 1e-3,
        efficiency);
  }

  private SenseDesign sense() {
    ThermocoupleType type = parts.thermocouple(text(DesignField.THERMOCOUPLE)).orElseThrow();
    return new SenseDesign(
        type,
        type.gauge((int) number(DesignField.GAUGE)).orElseThrow(),
        new SenseDesign.Lengths(
            number(DesignField.FREE_LENGTH) * MM,
            number(DesignField.LOOP_LENGTH),
            number(DesignField.BETWEEN_LENGTH) * MM),
        logger(),
        number(DesignField.GAIN),
        number(DesignField.AVERAGING));
  }

  private LoggerProfile logger() {
    if (has(DesignField.LOGGER)) {
      return parts.logger(text(DesignField.LOGGER)).orElseThrow();
    }
    return new LoggerProfile(
        LoggerProfile.own(text(DesignField.LOGGER_NAME)),
        number(DesignField.LOGGER_LOW) * 1e-3,
        number(DesignField.LOGGER_HIGH) * 1e-3,
        (int) number(DesignField.LOGGER_BITS),
        number(DesignField.LOGGER_NOISE) * 1e-6,
        number(DesignField.LOGGER_OFFSET) * 1e-6);
  }

  private AirState air(double altitude_m) {
    double standard_hPa = StandardAtmosphere.pressure_Pa(altitude_m) / 100;
    return new AirState(
        number(DesignField.AIR) + Constants.ZERO_C_K,
        100 * texts.optional(DesignField.PRESSURE.field()).orElse(standard_hPa),
        number(DesignField.HUMIDITY) / 100);
  }

  private Use use(double altitude_m) {
    return new Use(
        texts.word(DesignField.PLACE.field(), Use.Place.class),
        number(DesignField.CONTACT),
        number(DesignField.SLOWEST),
        number(DesignField.FASTEST),
        altitude_m);
  }

  private boolean has(DesignField field) {
    return texts.has(field.field());
  }

  private double number(DesignField field) {
    return texts.number(field.field());
  }

  private double either(DesignField field, double otherwise) {
    return texts.number(field.field(), otherwise);
  }

  private String text(DesignField field) {
    return texts.text(field.field());
  }
}
