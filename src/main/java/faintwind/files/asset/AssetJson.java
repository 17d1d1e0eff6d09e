package faintwind.files.asset;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.StdConverter;
import faintwind.files.JsonForm;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.Thermocouple;
import faintwind.physics.Thermocouple.Polynomial;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Cells;
import faintwind.physics.part.Coat;
import faintwind.physics.part.Label;
import faintwind.physics.part.LoggerProfile;
import faintwind.physics.part.Metal;
import faintwind.physics.part.ResistorStyle;
import faintwind.physics.part.ThermocoupleType;
import faintwind.physics.part.ThermocoupleType.Alloy;
import faintwind.physics.part.Wire;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Turns asset files that their schema has passed into parts in SI units. */
final class AssetJson {
  private static final double MM = 1e-3;
  private static final double PPM = 1e-6;
  private static final double MAH_C = 3.6;

  private static final JsonForm FORM =
      new JsonForm(Map.of(Alloy.class, AlloyForm.class, Polynomial.class, PolynomialForm.class));

  private AssetJson() {}

  /** A conductor's name is that of its alloy. */
  interface AlloyForm {
    @JsonProperty("alloy")
    String name();
  }

  /** The exponential term has named coefficients. */
  interface PolynomialForm {
    @JsonDeserialize(converter = Coefficients.class)
    List<Double> exponential();
  }

  /** The coefficients in their order: a0, a1, a2. */
  static final class Coefficients extends StdConverter<Map<String, Double>, List<Double>> {
    @Override
    public List<Double> convert(Map<String, Double> byName) {
      return List.copyOf(new TreeMap<>(byName).values());
    }
  }

  static Metal metal(ObjectNode node) {
    return new Metal(
        label(node),
        range(node, "density_kg_m3"),
        range(node, "specific_heat_J_kgK"),
        range(node, "conductivity_W_mK"),
        range(node, "cutting_speed_m_min").times(1 / 60.0),
        Metal.FirstBath.valueOf(upper(node, "first_bath")));
  }

  static Coat coat(ObjectNode node) {
    return new Coat(
        label(node),
        range(node, "emissivity"),
        range(node, "solar_absorptance"),
        Coat.Kind.valueOf(upper(node, "kind")),
        texts(node.get("metals")));
  }

  static Wire wire(ObjectNode node) {
    return new Wire(
        label(node),
        number(node, "core_mm") * MM,
        number(node, "outer_mm") * MM,
        range(node, "resistance_ohm_km").times(1e-3),
        number(node, "conductivity_W_mK"),
        number(node, "tempco_ppm_K") * PPM);
  }

  static ResistorStyle resistor(ObjectNode node) {
    return new ResistorStyle(
        label(node),
        new ResistorStyle.Body(
            range(node, "body_diameter_mm").times(MM),
            number(node, "body_length_mm") * MM,
            number(node, "lead_diameter_mm") * MM),
        number(node, "rating_W"),
        new ResistorStyle.Derating(
            number(node, "full_rating_C") + Constants.ZERO_C_K,
            number(node, "no_rating_C") + Constants.ZERO_C_K),
        range(node, "tempco_ppm_K").times(PPM));
  }

  static LoggerProfile logger(ObjectNode node) {
    return new LoggerProfile(
        label(node),
        number(node, "range_low_mV") * 1e-3,
        number(node, "range_high_mV") * 1e-3,
        node.get("bits").asInt(),
        number(node, "noise_uV") * 1e-6,
        number(node, "offset_uV") * 1e-6);
  }

  static BatteryType battery(ObjectNode node) {
    List<BatteryType.Capacity> capacities = new ArrayList<>();
    for (JsonNode row : node.get("capacities")) {
      capacities.add(
          new BatteryType.Capacity(
              number(row, "load_mA") * 1e-3, range(row, "capacity_mAh").times(MAH_C)));
    }
    return new BatteryType(
        label(node), number(node, "fresh_V"), number(node, "end_V"), capacities, cells(node));
  }

  private static Cells cells(ObjectNode node) {
    return new Cells(
        node.has("chemistry")
            ? Cells.Chemistry.valueOf(upper(node, "chemistry").replace('-', '_'))
            : Cells.Chemistry.NOT_RECORDED,
        node.path("protection").asText().equals("circuit"),
        current_A(node, "sleeps_below_mA"),
        current_A(node, "most_mA"));
  }

  private static OptionalDouble current_A(ObjectNode node, String key) {
    return node.has(key) ? OptionalDouble.of(number(node, key) * 1e-3) : OptionalDouble.empty();
  }

  static ThermocoupleType thermocouple(ObjectNode node) {
    return new ThermocoupleType(
        label(node),
        new Thermocouple(node.get("letter").asText(), list(node, "pieces", Polynomial.class)),
        new ThermocoupleType.Alloys(
            FORM.read(node.get("positive"), Alloy.class),
            FORM.read(node.get("negative"), Alloy.class),
            range(node, "positive_share_pct").times(0.01)),
        node.get("joining").asText(),
        list(node, "tolerances", ThermocoupleType.Tolerance.class),
        list(node, "colours", ThermocoupleType.Colours.class),
        list(node, "wires", JsonNode.class).stream().map(AssetJson::gauge).toList());
  }

  private static ThermocoupleType.Gauge gauge(JsonNode node) {
    return new ThermocoupleType.Gauge(
        node.get("awg").asInt(),
        number(node, "diameter_mm") * MM,
        // two makers' tables differ by up to 5 %, a real wire by 10 %
        Interval.range(
            number(node, "pair_low_ohm_m") * 0.95, number(node, "pair_high_ohm_m") * 1.05));
  }

  private static Label label(ObjectNode node) {
    return new Label(
        node.get("id").asText(),
        node.get("name").asText(),
        String.join("; ", texts(node.get("sources"))));
  }

  private static double number(JsonNode node, String key) {
    return node.get(key).asDouble();
  }

  private static Interval range(JsonNode node, String key) {
    JsonNode pair = node.get(key);
    return Interval.range(pair.get(0).asDouble(), pair.get(1).asDouble());
  }

  private static String upper(JsonNode node, String key) {
    return node.get(key).asText().toUpperCase(Locale.ROOT);
  }

  static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(t -> texts.add(t.asText()));
    return texts;
  }

  private static <T> List<T> list(JsonNode node, String key, Class<T> type) {
    List<T> all = new ArrayList<>();
    node.get(key).forEach(item -> all.add(FORM.read(item, type)));
    return all;
  }
}
