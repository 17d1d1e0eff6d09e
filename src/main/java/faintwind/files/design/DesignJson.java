package faintwind.files.design;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.physics.Constants;
import faintwind.physics.Interval;
import faintwind.physics.design.BallDesign;
import faintwind.physics.design.Design;
import faintwind.physics.design.HeaterDesign;
import faintwind.physics.design.SenseDesign;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.part.LoggerProfile;
import faintwind.physics.plating.PlatingPlan;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Turns a design into the JSON that {@link DesignReading} reads. */
final class DesignJson {
  private static final MathContext DIGITS = new MathContext(9);

  private DesignJson() {}

  static ObjectNode object(Design design) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "faintwind-design/1");
    root.put("name", design.name());
    root.set("ball", ball(design.ball()));
    root.set("heater", heater(design.heater()));
    root.set("supply", supply(design.supply()));
    root.set("sense", sense(design.sense()));
    ObjectNode air = root.putObject("air");
    air.put("temperature_C", tidy(design.air().temperature_K() - Constants.ZERO_C_K));
    air.put("pressure_hPa", tidy(design.air().pressure_Pa() / 100));
    air.put("altitude_m", tidy(design.use().altitude_m()));
    air.put("humidity_pct", tidy(100 * design.air().relativeHumidity()));
    ObjectNode use = root.putObject("use");
    use.put("place", lower(design.use().place()));
    use.put("contact_s", tidy(design.use().contact_s()));
    use.put("slowest_m_s", tidy(design.use().slowest_m_s()));
    use.put("fastest_m_s", tidy(design.use().fastest_m_s()));
    return root;
  }

  private static ObjectNode ball(BallDesign ball) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("metal", ball.metal().label().id());
    node.put("diameter_mm", tidy(1e3 * ball.diameter_m().nominal()));
    node.put("diameter_tolerance_mm", tidy(1e3 * ball.diameter_m().half()));
    node.put("coat", ball.coat().label().id());
    node.put("bore_mm", tidy(1e3 * ball.bore().diameter_m()));
    ball.bore().heatedDepth_m().ifPresent(d -> node.put("heated_bore_depth_mm", tidy(1e3 * d)));
    if (ball.bore().referenceDepth_m().isPresent()) {
      double depth = ball.bore().referenceDepth_m().getAsDouble();
      node.put("reference_bore_depth_mm", tidy(1e3 * depth));
    } else {
      node.put("reference_bore", "through");
    }
    ball.plating().ifPresent(p -> node.set("plating", plating(p)));
    return node;
  }

  private static ObjectNode plating(PlatingPlan plan) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("by", lower(plan.by()));
    node.put("nickel_um", tidy(1e6 * plan.nickel().thickness_m()));
    node.put("nickel_A_dm2", tidy(plan.nickel().current_A_m2() / 100));
    node.put("gold_um", tidy(1e6 * plan.gold().thickness_m()));
    node.put("gold_A_dm2", tidy(plan.gold().current_A_m2() / 100));
    node.put("room_m3", tidy(plan.room_m3()));
    return node;
  }

  private static ObjectNode heater(HeaterDesign heater) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("resistor", heater.style().label().id());
    node.put("series", heater.series().name());
    node.put("resistance_ohm", tidy(heater.resistance_ohm().nominal()));
    node.put("tolerance_pct", percent(heater.resistance_ohm()));
    node.put("lead_wire", heater.leads().label().id());
    node.put("lead_length_mm", tidy(1e3 * heater.leadLength_m()));
    node.put("coat_mm", tidy(1e3 * heater.coat_m()));
    return node;
  }

  private static ObjectNode supply(SupplyDesign supply) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("voltage_V", tidy(supply.voltage_V().nominal()));
    node.put("tolerance_pct", percent(supply.voltage_V()));
    SupplyDesign.Regulator regulator = supply.regulator();
    node.put("regulator", lower(regulator.kind()));
    if (regulator.kind() != SupplyDesign.Kind.MAINS) {
      node.put("dropout_V", tidy(regulator.dropout_V()));
      node.put("own_current_mA", tidy(1e3 * regulator.own_A()));
    }
    if (regulator.kind() == SupplyDesign.Kind.SWITCHING) {
      node.put("efficiency_pct", tidy(100 * regulator.efficiency()));
    }
    supply
        .cable()
        .ifPresent(
            c -> {
              node.put("cable", c.conductor().label().id());
              node.put("cable_length_m", tidy(c.length_m()));
            });
    supply.battery().ifPresent(b -> node.put("battery", b.label().id()));
    return node;
  }

  private static ObjectNode sense(SenseDesign sense) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("thermocouple", sense.type().function().letter());
    node.put("awg", sense.gauge().awg());
    node.put("free_length_mm", tidy(1e3 * sense.freeLength_m()));
    node.put("loop_length_m", tidy(sense.loopLength_m()));
    LoggerProfile logger = sense.logger();
    if (logger.label().id().equals("own")) {
      ObjectNode own = node.putObject("logger");
      own.put("name", logger.label().name());
      own.put("range_low_mV", tidy(1e3 * logger.low_V()));
      own.put("range_high_mV", tidy(1e3 * logger.high_V()));
      own.put("bits", logger.bits());
      own.put("noise_uV", tidy(1e6 * logger.noise_V()));
      own.put("offset_uV", tidy(1e6 * logger.offset_V()));
    } else {
      node.put("logger", logger.label().id());
    }
    node.put("gain", tidy(sense.gain()));
    node.put("averaging_s", tidy(sense.averaging_s()));
    return node;
  }

  private static double percent(Interval value) {
    return tidy(100 * value.half() / value.nominal());
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  // units back and forth leave digits such as 12.700000000000001
  private static double tidy(double value) {
    return new BigDecimal(value).round(DIGITS).doubleValue();
  }
}
