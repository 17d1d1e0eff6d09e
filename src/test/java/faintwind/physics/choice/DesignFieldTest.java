package faintwind.physics.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import faintwind.files.asset.Library;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Label;
import java.io.IOException;
import java.util.HashMap;
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

  private static Design design(Map<String, String> texts) {
    return EveryField.value(DesignTexts.design(texts, parts, Where.NOWHERE));
  }

  private static Map<String, String> with(String id, String text) {
    Map<String, String> texts = EveryField.texts();
    texts.put(id, text);
    return texts;
  }

  @Test
  void whatIsTypedIsWhatTheDesignSays() {
    assertThat(DesignField.texts(design(EveryField.texts()))).isEqualTo(EveryField.texts());
  }

  @Test
  void aWantedPowerIsSaidInsteadOfTheResistance() {
    Map<String, String> texts = EveryField.texts();
    texts.remove("heater.resistance_ohm");
    texts.put("heater.wanted_power_W", "0.3");
    assertThat(DesignField.texts(design(texts))).isEqualTo(texts);
  }

  @Test
  void aDiameterInInchesIsSaidInMillimetres() {
    Map<String, String> texts = EveryField.texts();
    texts.remove("ball.diameter_mm");
    texts.put("ball.diameter_in", "9/16");
    assertThat(DesignField.DIAMETER.of(design(texts))).isEqualTo("14.2875");
  }

  /** A mains adapter has no number of a regulator; a linear one has no efficiency. */
  @ParameterizedTest
  @CsvSource({"mains, false, false", "linear, true, false", "switching, true, true"})
  void aRegulatorSaysTheNumbersItHas(String kind, boolean dropout, boolean efficiency) {
    Map<String, String> texts = EveryField.texts();
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
    Map<String, String> texts = EveryField.texts();
    texts.keySet().removeIf(id -> id.startsWith("sense.logger."));
    texts.put("sense.logger", "logger-24bit-256mV");
    assertThat(DesignField.texts(design(texts))).isEqualTo(texts);
  }

  /** Those of a part that is missing mean nothing; one that is merely not said can still be. */
  @Test
  void aFieldAppliesUnlessWhatItIsOfIsMissing() {
    Map<String, String> whole = EveryField.texts();
    assertThat(DesignField.values())
        .filteredOn(f -> !PartFields.applies(f, design(whole)))
        .isEmpty();
    whole.keySet().removeIf(id -> id.startsWith("supply.cable") || id.startsWith("sense.logger."));
    whole.keySet().removeIf(id -> id.startsWith("ball.plating") || id.equals("ball.coat"));
    whole.put("sense.logger", "logger-24bit-256mV");
    Design less = design(whole);
    assertThat(DesignField.values())
        .filteredOn(f -> !PartFields.applies(f, less))
        .contains(DesignField.CABLE_LENGTH, DesignField.LOGGER_BITS, DesignField.GOLD)
        .doesNotContain(DesignField.POWER, DesignField.HEATED_DEPTH, DesignField.GAIN);
    assertThat(DesignField.POWER.of(less)).isEmpty();
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

  @Test
  void oneDiameterIsNeededAndWithinItsRange() {
    assertThat(refused(with("ball.diameter_mm", ""))).containsExactly("design.one-diameter");
    Map<String, String> inches = with("ball.diameter_in", "3");
    inches.remove("ball.diameter_mm");
    assertThat(refused(inches)).containsExactly("design.diameter-outside");
  }

  @Test
  void resistanceAndPowerTogetherAreRefused() {
    assertThat(refused(with("heater.wanted_power_W", "0.3")))
        .containsExactly("design.resistance-and-power");
  }

  /** 210 m has 988 hPa by the standard atmosphere; weather makes no tenth of it. */
  @Test
  void aPressureThatNoWeatherMakesIsRefused() {
    assertThat(refused(with("air.pressure_hPa", "850")))
        .containsExactly("design.pressure-contradicts-altitude");
    assertThat(refused(with("air.pressure_hPa", "1000"))).isEmpty();
  }

  @Test
  void anOwnLoggerIsWholeAndItsRangeTheRightWayRound() {
    assertThat(refused(with("sense.logger.bits", ""))).containsExactly("field.missing");
    assertThat(refused(with("sense.logger.range_low_mV", "40"))).containsExactly("asset.order");
    assertThat(refused(with("sense.logger.range_low_mV", "30"))).containsExactly("asset.order");
    Map<String, String> none = EveryField.texts();
    none.keySet().removeIf(id -> id.startsWith("sense.logger"));
    assertThat(refused(none)).containsExactly("field.missing");
  }

  @Test
  void whatIsLeftOutIsUsualAndNoted() {
    Map<String, String> few = new HashMap<>();
    few.put("ball.metal", "copper");
    few.put("ball.diameter_mm", "20");
    few.put("supply.voltage_V", "5");
    few.put("sense.thermocouple", "T");
    few.put("sense.logger", "logger-24bit-256mV");
    var made = DesignTexts.design(few, parts, Where.NOWHERE);
    assertThat(made.problems()).extracting(Problem::id).containsExactly("design.assumed");
    assertThat(made.problems().get(0).found())
        .contains("ball.coat = bare-polished-copper")
        .contains("ball.reference_bore_depth_mm = 15")
        .contains("heater.wanted_power_W = 0.25")
        .contains("heater.tolerance_pct = 5");
    Design design = EveryField.value(made);
    // 5 V · 5 V / 0.25 W, which E24 has; ± 5 % is its series'
    assertThat(design.heater().resistance_ohm().nominal()).isEqualTo(100);
    assertThat(design.heater().resistance_ohm().high()).isEqualTo(105);
    assertThat(DesignField.PLATED_BY.of(design)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "copper, bare-polished-copper",
    "brass, bare-brass",
    "aluminium, bare-polished-aluminium"
  })
  void aMetalHasItsOwnBareSurface(String metal, String surface) {
    Map<String, String> texts = with("ball.metal", metal);
    texts.keySet().removeIf(id -> id.startsWith("ball.plating") || id.equals("ball.coat"));
    assertThat(DesignField.COAT.of(design(texts))).isEqualTo(surface);
  }

  @Test
  void changesAreJudgedByThemselves() {
    assertThat(DesignTexts.problems(Map.of("ball.bore_mm", "wide", "use.contact_s", "10")))
        .extracting(Problem::id, p -> p.where().column())
        .containsExactly(tuple("field.not-a-number", Optional.of("ball.bore_mm")));
  }
}
