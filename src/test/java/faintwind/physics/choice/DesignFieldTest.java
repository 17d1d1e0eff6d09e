package faintwind.physics.choice;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Label;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts into a design and back, field by field, without a file and without a window. */
class DesignFieldTest {
  private static Catalogue parts;

  @BeforeAll
  static void read() throws IOException {
    parts = Library.shipped();
  }

  /** Every field that can stand beside the others, each with a text of its own. */
  private static Map<String, String> everything() {
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

  private static Design design(Map<String, String> texts) {
    return value(DesignTexts.design(texts, parts, Where.NOWHERE));
  }

  private static <T> T value(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private static Map<String, String> with(String id, String text) {
    Map<String, String> texts = everything();
    texts.put(id, text);
    return texts;
  }

  @Test
  void whatIsTypedIsWhatTheDesignSays() {
    assertThat(DesignField.texts(design(everything()))).isEqualTo(everything());
  }

  @Test
  void aWantedPowerIsSaidInsteadOfTheResistance() {
    Map<String, String> texts = everything();
    texts.remove("heater.resistance_ohm");
    texts.put("heater.wanted_power_W", "0.3");
    assertThat(DesignField.texts(design(texts))).isEqualTo(texts);
  }

  @Test
  void aDiameterInInchesIsSaidInMillimetres() {
    Map<String, String> texts = everything();
    texts.remove("ball.diameter_mm");
    texts.put("ball.diameter_in", "9/16");
    assertThat(DesignField.DIAMETER.of(design(texts))).isEqualTo("14.2875");
  }

  /** A mains adapter has no number of a regulator; a linear one has no efficiency. */
  @ParameterizedTest
  @CsvSource({"mains, false, false", "linear, true, false", "switching, true, true"})
  void aRegulatorSaysTheNumbersItHas(String kind, boolean dropout, boolean efficiency) {
    Map<String, String> texts = everything();
    texts.put("supply.regulator", kind);
    if (kind.equals("mains")) {
      texts.remove("supply.battery");
    }
    if (!dropout) {
      texts.keySet().removeAll(List.of("supply.dropout_V", "supply.own_current_mA"));
    }
    if (!efficiency) {
      texts.remove("supply.efficiency_pct");
    }
    Design design = design(texts);
    assertThat(DesignField.DROPOUT.of(design).isEmpty()).isEqualTo(!dropout);
    assertThat(DesignField.OWN_CURRENT.of(design).isEmpty()).isEqualTo(!dropout);
    assertThat(DesignField.EFFICIENCY.of(design).isEmpty()).isEqualTo(!efficiency);
  }

  @Test
  void aLibrarysLoggerIsSaidByItsIdAlone() {
    Map<String, String> texts = everything();
    texts.keySet().removeIf(id -> id.startsWith("sense.logger."));
    texts.put("sense.logger", "logger-24bit-256mV");
    assertThat(DesignField.texts(design(texts))).isEqualTo(texts);
  }

  @Test
  void fieldsAreFoundByTheirId() {
    assertThat(DesignField.named("use.slowest_m_s")).contains(DesignField.SLOWEST);
    assertThat(DesignField.named("use.slow")).isEqualTo(Optional.empty());
  }

  @Test
  void whatNamesAPartKnowsTheLibrarys() {
    assertThat(DesignField.METAL.parts(parts)).extracting(Label::id).contains("copper");
    assertThat(DesignField.COAT.parts(parts)).extracting(Label::id).contains("gold");
    assertThat(DesignField.RESISTOR.parts(parts))
        .extracting(Label::id)
        .contains("metal-film-half-watt");
    assertThat(DesignField.LEAD.parts(parts)).extracting(Label::id).contains("copper-36awg");
    assertThat(DesignField.BATTERY.parts(parts)).extracting(Label::id).contains("4xaa-alkaline");
    assertThat(DesignField.THERMOCOUPLE.parts(parts)).extracting(Label::id).contains("K");
    assertThat(DesignField.LOGGER.parts(parts))
        .extracting(Label::id)
        .contains("logger-24bit-256mV");
    assertThat(DesignField.NAME.parts(parts)).isEmpty();
  }

  private static List<String> refused(Map<String, String> texts) {
    return DesignTexts.design(texts, parts, Where.NOWHERE).problems().stream()
        .filter(Problem::isError)
        .map(Problem::id)
        .toList();
  }

  @Test
  void eachTextIsJudgedByItsField() {
    assertThat(refused(with("ball.bore_mm", "wide"))).containsExactly("field.not-a-number");
    assertThat(refused(with("sense.awg", "36.5"))).containsExactly("field.not-whole");
    assertThat(refused(with("use.place", "cellar"))).containsExactly("field.unknown-word");
    assertThat(refused(with("supply.voltage_V", ""))).containsExactly("field.missing");
    assertThat(refused(with("ball.metal", "cheese"))).hasSize(1);
  }

  @Test
  void aReferenceBallBoredThroughIsRefused() {
    Map<String, String> texts = with("ball.reference_bore", "through");
    texts.remove("ball.reference_bore_depth_mm");
    assertThat(refused(texts)).containsExactly("design.reference-bored-through");
  }

  @Test
  void inchesAndMillimetresTogetherAreRefused() {
    assertThat(refused(with("ball.diameter_in", "1/2"))).isNotEmpty();
  }
}
