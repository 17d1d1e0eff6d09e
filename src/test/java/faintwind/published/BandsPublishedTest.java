package faintwind.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.guide.Situation;
import faintwind.guide.Situation.DatedSheet;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.job.design.KeptDesigns;
import faintwind.message.Amount;
import faintwind.record.InstrumentState;
import faintwind.record.ReadingVerdict;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The bands of loop and cable against what published wire tables give for the same lengths; as much
 * of the one alloy as of the other, since the tables give pairs.
 */
class BandsPublishedTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final double LOOP_M = 0.6;
  private static final double CABLE_M = 2;
  private static final double LEADS_OHM = 0.3;

  private static Map<String, Double> values(String type, int awg, String cable) throws IOException {
    String json =
        """
        {"format": "faintwind-design/1", "name": "made up",
         "ball": {"metal": "copper", "diameter_mm": 12.7, "bore_mm": 3.3, "coat": "bare-polished-copper"},
         "heater": {"resistor": "metal-film-half-watt", "series": "E24", "resistance_ohm": 100, "tolerance_pct": 1, "lead_wire": "copper-36awg", "lead_length_mm": 60},
         "supply": {"voltage_V": 5, "tolerance_pct": 2, "regulator": "linear", "battery": "9v-alkaline", "cable": "CABLE", "cable_length_m": 2},
         "sense": {"thermocouple": "TYPE", "awg": AWG, "free_length_mm": 80, "loop_length_m": 0.3, "between_length_mm": 600, "logger": "logger-24bit-256mV"},
         "air": {"temperature_C": 20, "pressure_hPa": 1013.25, "humidity_pct": 50},
         "use": {"place": "indoors", "contact_s": 10, "slowest_m_s": 0.05, "fastest_m_s": 3}}
        """
            .replace("CABLE", cable)
            .replace("TYPE", type)
            .replace("AWG", String.valueOf(awg));
    var sheet = KeptDesigns.withShippedParts().sheet(json).orElseThrow();
    return new Situation(
            InstrumentState.EMPTY,
            List.of(new DatedSheet(SampleBuild.BEGIN, sheet)),
            SampleBuild.LATER)
        .sheetValues();
  }

  private static ReadingVerdict verdict(String id, double ohm, Map<String, Double> values) {
    Reading reading = CHECKLIST.stepOfReading(id).orElseThrow().reading(id).orElseThrow();
    return reading.judge(Amount.exact(ohm, "Ω"), values).orElseThrow().verdict();
  }

  @ParameterizedTest(
      name = "type {0}, AWG {1}: {2} ohm a metre of pair (wire makers'' tables, seen)")
  @CsvSource({
    "K, 24, 4.8885", "T, 24, 2.5197", "J, 24, 3.0446", "E, 24, 5.8891", "N, 24, 6.4961",
    "K, 30, 19.6522", "T, 30, 10.1312", "J, 30, 12.2408", "E, 30, 23.6680", "N, 30, 26.1155"
  })
  void aLoopAsTheTablesHaveItIsGoodAndHalfOrTwiceIsNot(String type, int awg, double pair_ohm_m)
      throws IOException {
    Map<String, Double> values = values(type, awg, "copper-24awg");
    double loop = LOOP_M * pair_ohm_m;
    assertThat(verdict("loop", loop, values)).isEqualTo(ReadingVerdict.GOOD);
    assertThat(verdict("loop", 2 * loop, values)).isEqualTo(ReadingVerdict.STOP);
    assertThat(verdict("loop", loop / 2, values)).isEqualTo(ReadingVerdict.STOP);
  }

  /** Of 2 m; the band has five per cent for real wire and 0.5 ohm for the meter's leads. */
  @ParameterizedTest(name = "{0}: {1} ohm a kilometre (wire-gauge table, seen)")
  @CsvSource({
    "copper-24awg, 84.219, 0.1684, 0.677",
    "copper-26awg, 133.891, 0.2678, 0.781",
    "copper-28awg, 212.927, 0.4259, 0.947"
  })
  void aConductorAsTheTableHasItIsGoodAndABrokenOneIsNot(
      String cable, double ohm_km, double conductor_ohm, double highest_ohm) throws IOException {
    Map<String, Double> values = values("K", 30, cable);
    assertThat(CABLE_M * ohm_km / 1e3).isCloseTo(conductor_ohm, within(1e-4));
    assertThat(Objects.requireNonNull(values.get("cable_end_to_end_high_ohm")))
        .isCloseTo(highest_ohm, within(0.01 * conductor_ohm + 5e-3));
    String id = "cable-heater-plus";
    assertThat(verdict(id, conductor_ohm + LEADS_OHM, values)).isEqualTo(ReadingVerdict.GOOD);
    assertThat(verdict(id, 3 * (conductor_ohm + 1), values)).isEqualTo(ReadingVerdict.STOP);
  }
}
