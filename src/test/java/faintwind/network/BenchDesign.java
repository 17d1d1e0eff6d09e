package faintwind.network;

import faintwind.guide.Situation;
import faintwind.job.design.KeptDesigns;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;

/** A design to build from, with the numbers of its sheet. */
final class BenchDesign {
  static final OffsetDateTime SINCE = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");

  private static final String TEXT =
      """
      {
        "format": "faintwind-design/1",
        "name": "made up for the network model",
        "ball": {"metal": "copper", "diameter_mm": 12.7, "bore_mm": 3.3, "reference_bore_depth_mm": 9.5, "coat": "bare-polished-copper"},
        "heater": {"resistor": "metal-film-half-watt", "series": "E24", "resistance_ohm": OHM, "tolerance_pct": TOLERANCE, "lead_wire": "copper-36awg", "lead_length_mm": 60},
        "supply": {"voltage_V": VOLTS, "tolerance_pct": 2, "regulator": "linear", "battery": "9v-alkaline", "cable": "CABLE", "cable_length_m": METRES},
        "sense": {"thermocouple": "TYPE", "awg": 36, "free_length_mm": 80, "loop_length_m": 0.6, "logger": "logger-24bit-256mV"},
        "air": {"temperature_C": 20, "pressure_hPa": 1013.25, "humidity_pct": 50},
        "use": {"place": "indoors", "contact_s": 10, "slowest_m_s": 0.05, "fastest_m_s": 3}
      }
      """;

  private static final List<String> GAPS =
      List.of("OHM", "TOLERANCE", "VOLTS", "CABLE", "METRES", "TYPE");

  private final DesignSheet sheet;
  private final Map<String, Double> values;

  private BenchDesign(DesignSheet sheet) {
    this.sheet = sheet;
    this.values =
        new Situation(InstrumentState.EMPTY, List.of(new Situation.DatedSheet(SINCE, sheet)), SINCE)
            .sheetValues();
  }

  /** Four builds that differ in heater, supply, cable and thermocouple. */
  static List<BenchDesign> all() {
    try {
      KeptDesigns designs = KeptDesigns.withShippedParts();
      return List.of(
          of(designs, "100", "1", "5", "copper-28awg", "0.5", "K"),
          of(designs, "100", "5", "5", "copper-24awg", "2", "T"),
          of(designs, "24", "2", "2.4", "copper-24awg", "1", "J"),
          of(designs, "390", "1", "9", "copper-32awg", "3", "E"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BenchDesign of(KeptDesigns designs, String... filled) {
    String json = TEXT;
    for (int i = 0; i < filled.length; i++) {
      json = json.replace(GAPS.get(i), filled[i]);
    }
    String whole = json;
    return new BenchDesign(designs.sheet(json).orElseThrow(() -> new AssertionError(whole)));
  }

  DesignSheet sheet() {
    return sheet;
  }

  double value(String name) {
    return Objects.requireNonNull(values.get(name), name);
  }

  /** A value between two of the sheet; one time in four at an edge. */
  double within(String low, String high, RandomGenerator random) {
    double at =
        switch (random.nextInt(8)) {
          case 0 -> 0;
          case 1 -> 1;
          default -> random.nextDouble();
        };
    return value(low) + at * (value(high) - value(low));
  }
}
