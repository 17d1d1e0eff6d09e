package faintwind.physics.choice;

import faintwind.message.Checked;
import java.util.LinkedHashMap;
import java.util.Map;

/** A design that says something of every field. */
final class EveryField {
  private EveryField() {}

  /** Every field that can stand beside the others, each with a text of its own. */
  static Map<String, String> texts() {
    String[] texts = {
      "name", "all of it",
      "ball.metal", "copper",
      "ball.diameter_mm", "14",
      "ball.diameter_tolerance_mm", "0.07",
      "ball.coat", "gold",
      "ball.bore_mm", "3.2",
      "ball.heated_bore_depth_mm", "10.5",
      "ball.reference_bore_depth_mm", "9.5",
      "ball.plating.by", "home",
      "ball.plating.nickel_um", "6",
      "ball.plating.nickel_A_dm2", "1.5",
      "ball.plating.gold_um", "0.4",
      "ball.plating.gold_A_dm2", "0.25",
      "ball.plating.room_m3", "40",
      "heater.resistor", "metal-film-half-watt",
      "heater.series", "E96",
      "heater.resistance_ohm", "102",
      "heater.tolerance_pct", "1",
      "heater.lead_wire", "copper-36awg",
      "heater.lead_length_mm", "70",
      "heater.coat_mm", "0.06",
      "supply.voltage_V", "5.5",
      "supply.tolerance_pct", "3",
      "supply.regulator", "switching",
      "supply.dropout_V", "1.5",
      "supply.own_current_mA", "4",
      "supply.efficiency_pct", "83",
      "supply.cable", "copper-28awg",
      "supply.cable_length_m", "3",
      "supply.battery", "4xaa-alkaline",
      "sense.thermocouple", "K",
      "sense.awg", "36",
      "sense.free_length_mm", "90",
      "sense.between_length_mm", "140",
      "sense.loop_length_m", "0.6",
      "sense.logger.name", "mine",
      "sense.logger.range_low_mV", "-20",
      "sense.logger.range_high_mV", "30",
      "sense.logger.bits", "18",
      "sense.logger.noise_uV", "2",
      "sense.logger.offset_uV", "3",
      "sense.gain", "2",
      "sense.averaging_s", "20",
      "air.temperature_C", "21",
      "air.pressure_hPa", "985",
      "air.altitude_m", "210",
      "air.humidity_pct", "45",
      "use.place", "narrow",
      "use.contact_s", "12",
      "use.slowest_m_s", "0.06",
      "use.fastest_m_s", "2.5"
    };
    Map<String, String> all = new LinkedHashMap<>();
    for (int i = 0; i < texts.length; i += 2) {
      all.put(texts[i], texts[i + 1]);
    }
    return all;
  }

  static <T> T value(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }
}
