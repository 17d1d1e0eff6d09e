package faintwind.physics.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.asset.Library;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What follows from a change of one field. */
class DesignEditTest {
  private static Catalogue parts;
  private static Design start;

  @BeforeAll
  static void read() throws IOException {
    parts = Library.shipped();
    start = EveryField.value(DesignTexts.design(EveryField.texts(), parts, Where.NOWHERE));
  }

  private static Design with(Design from, DesignField field, String text) {
    return EveryField.value(DesignEdit.with(from, Map.of(field, text), parts, Where.NOWHERE));
  }

  private static Design with(DesignField field, String text) {
    return with(start, field, text);
  }

  @Test
  void anotherMetalTakesItsOwnBareSurfaceAndLosesThePlating() {
    Design brass = with(DesignField.METAL, "brass");
    assertThat(DesignField.COAT.of(brass)).isEqualTo("bare-brass");
    assertThat(brass.ball().plating()).isEmpty();
  }

  @Test
  void anotherSurfaceBeginsWithTheUsualPlating() {
    Design nickel = with(DesignField.COAT, "gold");
    assertThat(DesignField.NICKEL.of(nickel)).isEqualTo("5");
    assertThat(DesignField.GOLD.of(nickel)).isEqualTo("0.5");
    assertThat(DesignField.NICKEL_CURRENT.of(nickel)).isEqualTo("1");
    assertThat(DesignField.ROOM.of(nickel)).isEqualTo("30");
  }

  @Test
  void anotherDiameterTakesItsOwnDepthOfTheReferenceHole() {
    Design thick = with(DesignField.DIAMETER, "16");
    assertThat(DesignField.DIAMETER.of(thick)).isEqualTo("16");
    assertThat(DesignField.REFERENCE_DEPTH.of(thick)).isEqualTo("12");
    Design inch = with(DesignField.DIAMETER_IN, "5/8");
    assertThat(DesignField.DIAMETER.of(inch)).isEqualTo("15.875");
    assertThat(DesignField.REFERENCE_DEPTH.of(inch)).isEqualTo("11.9");
  }

  @Test
  void aDepthOfTheReferenceHoleIsTakenAsItIs() {
    assertThat(DesignField.REFERENCE_DEPTH.of(with(DesignField.REFERENCE_DEPTH, "8")))
        .isEqualTo("8");
    assertThat(
            DesignEdit.with(
                    start, Map.of(DesignField.REFERENCE_BORE, "through"), parts, Where.NOWHERE)
                .problems())
        .extracting(Problem::id)
        .containsExactly("design.reference-bored-through");
  }

  /** 5.5 V · 5.5 V / 0.3 W = 100.8 Ω, next to 100 Ω of E96. */
  @Test
  void aPowerTakesTheNearestResistance() {
    Design power = with(DesignField.POWER, "0.3");
    assertThat(power.heater().resistance_ohm().nominal()).isEqualTo(100);
    assertThat(DesignField.RESISTANCE.of(power)).isEmpty();
    assertThat(DesignEdit.power_W(power)).isEqualTo(0.3);
    Design again = with(power, DesignField.RESISTANCE, "110");
    assertThat(again.heater().resistance_ohm().nominal()).isEqualTo(110);
    assertThat(DesignField.POWER.of(again)).isEmpty();
  }

  /** 102 Ω take 5.5²/102 = 0.2966 W at 5.5 V; of E24 100 Ω take it nearest. */
  @Test
  void anotherSeriesKeepsThePower() {
    assertThat(DesignEdit.power_W(start)).isCloseTo(0.29657, within(1e-5));
    Design coarse = with(DesignField.SERIES, "E24");
    assertThat(coarse.heater().resistance_ohm().nominal()).isEqualTo(100);
    assertThat(coarse.heater().wanted_W().orElseThrow()).isCloseTo(0.29657, within(1e-5));
    Design wanted = with(with(DesignField.POWER, "0.2"), DesignField.SERIES, "E24");
    assertThat(wanted.heater().wanted_W()).hasValue(0.2);
  }

  @Test
  void anotherRegulatorBeginsWithItsOwnNumbers() {
    Design linear = with(DesignField.REGULATOR, "linear");
    assertThat(DesignField.DROPOUT.of(linear)).isNotEqualTo("1.5").isNotEmpty();
    assertThat(DesignField.OWN_CURRENT.of(linear)).isNotEqualTo("4").isNotEmpty();
    assertThat(DesignField.EFFICIENCY.of(linear)).isEmpty();
  }

  @Test
  void withoutACableThereIsNoLength() {
    Design bare = with(DesignField.CABLE, "");
    assertThat(bare.supply().cable()).isEmpty();
    Design other = with(DesignField.CABLE, "copper-36awg");
    assertThat(DesignField.CABLE_LENGTH.of(other)).isEqualTo("3");
  }

  @Test
  void anOwnLoggerBeginsWithTheNumbersOfTheOneBefore() {
    Design library = with(DesignField.LOGGER, "logger-24bit-256mV");
    assertThat(DesignField.LOGGER_BITS.of(library)).isEmpty();
    Design own = with(library, DesignField.LOGGER, DesignEdit.OWN);
    assertThat(own.sense().logger().isOwn()).isTrue();
    assertThat(DesignField.LOGGER_BITS.of(own)).isEqualTo("22");
    assertThat(own.sense().logger().high_V()).isEqualTo(library.sense().logger().high_V());
    assertThat(own.sense().logger().low_V()).isEqualTo(library.sense().logger().low_V());
    assertThat(own.sense().logger().noise_V()).isEqualTo(library.sense().logger().noise_V());
    assertThat(own.sense().logger().offset_V()).isEqualTo(library.sense().logger().offset_V());
  }

  /** 1000 m have 898.7 hPa (ASHRAE Fundamentals, chapter 1). */
  @Test
  void anotherAltitudeTakesItsOwnPressure() {
    Design high = with(DesignField.ALTITUDE, "1000");
    assertThat(high.air().pressure_Pa()).isCloseTo(89_870, within(20.0));
  }

  @Test
  void anEmptyTextTakesTheUsualValue() {
    assertThat(DesignField.CONTACT.of(with(DesignField.CONTACT, ""))).isEqualTo("10");
  }
}
