package faintwind.published;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.physics.Ball;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.BatteryRun;
import faintwind.physics.design.Design;
import faintwind.physics.design.SunLoad;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.design.TouchLimit;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Cells;
import faintwind.physics.part.ColourCode;
import faintwind.physics.part.ESeries;
import faintwind.physics.part.Label;
import faintwind.physics.part.Metal;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.part.Wire;
import faintwind.physics.plating.Deposit;
import faintwind.physics.plating.Hydrogen;
import faintwind.physics.plating.PlatingBath;
import faintwind.physics.sheet.DesignSheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class PartsPublishedTest {
  private static final Label NAME = new Label("x", "x", "test");

  private final Catalogue catalogue;

  PartsPublishedTest() throws IOException {
    catalogue = Library.shipped();
  }

  @TestFactory
  Stream<DynamicTest> parts() {
    return PublishedRow.tests("parts.csv", this::compute);
  }

  private double compute(PublishedRow row) {
    return switch (row.what()) {
      case "eseries" -> series(row).decade().get((int) row.number("i"));
      case "nearest" -> series(row).nearest_ohm(row.number("ohm"));
      case "colour_bands" -> areBands(row) ? 1 : 0;
      case "power", "heater_V" -> sheet(row);
      case "lumped_tau" -> lumped(row);
      case "battery_mAh_low", "battery_mAh_high" -> capacity(row);
      case "conductor_ohm_km" ->
          1e3 * catalogue.wire(row.text("wire")).orElseThrow().resistance_ohm_m().high();
      case "derating" -> 1e3 * style(row).allowed_W(row.number("t") + Constants.ZERO_C_K);
      case "altitude_derating" -> fullStyle().allowed_W(300, row.number("z"));
      case "battery_mA" -> 1e3 * BatteryRun.current_A(supply(row, 400), row.number("load") / 1e3);
      case "battery_h" -> hours(row);
      case "touch" -> TouchLimit.temperature_C(row.number("s"));
      case "sun_mW", "sun_K" -> sun(row);
      case "gauge", "copper_ohm_km", "pair_ohm_m", "cable_loop" -> wire(row);
      case "rpm_in_range", "ball_g" -> making(row);
      default -> row.what().startsWith("tc_") ? type(row) : plating(row);
    };
  }

  /** The whole way: design file, sheet, quantity. */
  private double sheet(PublishedRow row) {
    String cable =
        row.what().equals("heater_V")
            ? ", \"cable\": \"copper-28awg\", \"cable_length_m\": " + row.number("m")
            : "";
    String text =
        ("{\"format\": \"faintwind-design/1\", \"ball\": {\"metal\": \"copper\","
                + " \"diameter_mm\": 12.7}, \"heater\": {\"resistance_ohm\": %s},"
                + " \"supply\": {\"voltage_V\": %s%s}, \"sense\": {\"thermocouple\": \"K\","
                + " \"logger\": \"logger-24bit-256mV\"}}")
            .formatted(row.number("R"), row.number("V"), cable);
    DesignSheet sheet = DesignSheet.of(((Checked.Ok<Design>) parsed(text)).value());
    return row.what().equals("power")
        ? 1e3 * sheet.quantity("heater_power_W").orElseThrow().value().nominal()
        : sheet.quantity("heater_voltage_V").orElseThrow().value().nominal();
  }

  private Checked<Design> parsed(String text) {
    try {
      return DesignFile.parse(text, catalogue);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** ρ·c·D/(6·h) of a solid ball: its heat capacity over h times its surface. */
  private double lumped(PublishedRow row) {
    Metal metal = metal(row);
    double d = row.number("D");
    BallDesign ball = solid(metal, d);
    double c = metal.specificHeat_J_kgK().nominal();
    double capacity = ball.heatCapacity_J_K(OptionalDouble.empty(), new BallDesign.Sizes(d, c));
    return capacity / (row.number("h") * new Ball(d, capacity, 0, List.of()).area_m2());
  }

  /** A ball whose hole is next to nothing. */
  private BallDesign solid(Metal metal, double diameter_m) {
    return new BallDesign(
        metal,
        catalogue.coats().get(0),
        Interval.exact(diameter_m),
        new BallDesign.Bore(1e-9, OptionalDouble.empty(), OptionalDouble.empty()),
        Optional.empty());
  }

  private double capacity(PublishedRow row) {
    Interval charge_C =
        catalogue.battery(row.text("battery")).orElseThrow().charge_C(row.number("mA") / 1e3);
    return (row.what().endsWith("low") ? charge_C.low() : charge_C.high()) / 3.6;
  }

  private static ESeries series(PublishedRow row) {
    return ESeries.valueOf(row.text("series"));
  }

  private static boolean areBands(PublishedRow row) {
    List<ColourCode.Colour> bands =
        Arrays.stream(row.text("bands").split(" ", -1)).map(ColourCode.Colour::valueOf).toList();
    return ColourCode.bands(row.number("ohm"), row.number("tolerance")).equals(bands);
  }

  private static ResistorStyle style(PublishedRow row) {
    return new ResistorStyle(
        NAME,
        new ResistorStyle.Body(Interval.exact(0.0024), 0.006, 0.0006),
        row.number("rating"),
        new ResistorStyle.Derating(
            row.number("full") + Constants.ZERO_C_K, row.number("none") + Constants.ZERO_C_K),
        Interval.exact(0));
  }

  private static ResistorStyle fullStyle() {
    return new ResistorStyle(
        NAME,
        new ResistorStyle.Body(Interval.exact(0.0024), 0.006, 0.0006),
        1,
        new ResistorStyle.Derating(343.15, 428.15),
        Interval.exact(0));
  }

  /** 5 V out of a 9 V battery whose voltage is taken as constant, as the textbook sum does. */
  private static SupplyDesign supply(PublishedRow row, double capacity_mAh) {
    BatteryType battery =
        new BatteryType(
            NAME,
            9.0 + 1e-9,
            9.0 - 1e-9,
            List.of(new BatteryType.Capacity(0.1, Interval.exact(3.6 * capacity_mAh))),
            new Cells(
                Cells.Chemistry.ALKALINE, false, OptionalDouble.empty(), OptionalDouble.empty()));
    return new SupplyDesign(
        Interval.exact(5),
        new SupplyDesign.Regulator(
            SupplyDesign.Kind.valueOf(row.text("kind")), 2, row.number("own") / 1e3, 0.85),
        Optional.empty(),
        Optional.of(battery));
  }

  private static double hours(PublishedRow row) {
    Interval load = Interval.exact(row.number("load") / 1e3);
    return BatteryRun.time_s(supply(row, row.number("mAh")), load).nominal() / 3600;
  }

  /** What a ball takes up, and by how much it is warmer when it loses as much. */
  private static double sun(PublishedRow row) {
    Interval alpha = Interval.exact(row.number("alpha"));
    if (row.what().equals("sun_mW")) {
      return 1e3 * SunLoad.absorbed_W(alpha, row.number("E"), row.number("D")).nominal();
    }
    double any_m = 0.0127;
    double absorbed_W = SunLoad.absorbed_W(alpha, row.number("E"), any_m).nominal();
    return absorbed_W / (row.number("h") * new Ball(any_m, 1, 0, List.of()).area_m2());
  }

  private double wire(PublishedRow row) {
    int awg = (int) row.number("awg");
    if (row.what().equals("gauge")) {
      return 1e3 * Wire.gauge_m(awg);
    }
    if (row.what().equals("pair_ohm_m")) {
      ThermocoupleType type = catalogue.thermocouple(row.text("type")).orElseThrow();
      return type.gauge(awg).orElseThrow().pair_ohm_m().nominal();
    }
    Wire copper = catalogue.wire("copper-" + awg + "awg").orElseThrow();
    return row.what().equals("cable_loop")
        ? new SupplyDesign.Cable(copper, row.number("m")).loop_ohm().nominal()
        : 1e3 * copper.resistance_ohm_m().nominal();
  }

  private double making(PublishedRow row) {
    Metal metal = metal(row);
    if (row.what().equals("ball_g")) {
      return 1e3 * solid(metal, row.number("D")).drilled_kg(OptionalDouble.empty()).nominal();
    }
    Interval rpm = metal.drillTurns_1_s(row.number("d") * 1e-3).times(60);
    // 60.96 m/min is printed as 61, 4774.6 as 4775
    double rounding = 1e-3 * row.number("v");
    double v = row.number("v");
    return v >= rpm.low() - rounding && v <= rpm.high() + rounding ? 1 : 0;
  }

  private Metal metal(PublishedRow row) {
    return catalogue.metal(row.text("metal")).orElseThrow();
  }

  private double type(PublishedRow row) {
    ThermocoupleType type = catalogue.thermocouple(row.text("type")).orElseThrow();
    if (row.what().equals("tc_class1")) {
      return type.tolerances().stream()
          .filter(t -> t.grade().equals("1"))
          .findFirst()
          .orElseThrow()
          .limit_K();
    }
    String standard = row.what().equals("tc_iec_colour") ? "IEC" : "ASTM";
    ThermocoupleType.Colours colours =
        type.colours().stream()
            .filter(c -> c.standard().startsWith(standard))
            .findFirst()
            .orElseThrow();
    return row.text("colours").equals(colours.positive() + "/" + colours.negative()) ? 1 : 0;
  }

  private double plating(PublishedRow row) {
    return switch (row.what()) {
      case "g_per_Ah" -> 1e3 * deposit(row).mass_kg(3600, 1);
      case "um_per_A_min_dm2" -> 1e6 * deposit(row).thickness_m(60, 1, 0.01);
      case "plated_g" ->
          1e3 * deposit(row).mass_kg(row.number("A") * row.number("s"), row.number("eff"));
      case "plated_um" ->
          1e6
              * deposit(row)
                  .thickness_m(
                      row.number("A") * row.number("s"),
                      row.number("eff"),
                      row.number("dm2") * 0.01);
      case "plating_mA" ->
          1e3
              * new PlatingBath(Deposit.NICKEL, area(row), 100 * row.number("A_dm2"), 1)
                  .current_A();
      case "plating_s" ->
          deposit(row).charge_C(row.number("um") * 1e-6, 1, area(row))
              / (row.number("A_dm2") * 100 * area(row));
      case "hydrogen_L" ->
          1e3 * Hydrogen.volume_m3(row.number("Ah") * 3600, 0, row.number("T"), 101_325);
      default -> range(row);
    };
  }

  private static Deposit deposit(PublishedRow row) {
    return Deposit.valueOf(row.text("deposit"));
  }

  private static double area(PublishedRow row) {
    return Math.PI * row.number("D") * row.number("D");
  }

  private double range(PublishedRow row) {
    return switch (row.what()) {
      case "metal_density" -> metal(row).density_kg_m3().nominal();
      case "metal_cp_in_range" -> in(metal(row).specificHeat_J_kgK(), row);
      case "metal_k_in_range" -> in(metal(row).conductivity_W_mK(), row);
      case "alpha_in_range" ->
          in(catalogue.coat(row.text("coat")).orElseThrow().solarAbsorptance(), row);
      case "emissivity_in_range" ->
          in(catalogue.coat(row.text("coat")).orElseThrow().emissivity(), row);
      default -> throw new IllegalArgumentException(row.what().toLowerCase(Locale.ROOT));
    };
  }

  private static double in(Interval range, PublishedRow row) {
    double v = row.number("v");
    return range.low() <= v && v <= range.high() ? 1 : 0;
  }
}
