package faintwind.physics.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Label;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the sheet says of a lithium pack and of a power bank, each a made-up part of the library.
 */
class SourceSheetTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");
  private static final double FRESH_V = 8.4;

  /** The half-inch design with its battery exchanged for a pack of this name. */
  private static DesignSheet sheet(String pack, String resistance) throws IOException {
    BatteryType.Capacity capacity = new BatteryType.Capacity(0.2, new Interval(7200, 9000, 10800));
    Label label = new Label("made-up-pack", pack, "made up");
    BatteryType battery = new BatteryType(label, FRESH_V, 6, List.of(capacity));
    Catalogue shipped = Library.shipped();
    Catalogue catalogue =
        new Catalogue(
            shipped.metals(),
            shipped.coats(),
            shipped.wires(),
            shipped.thermocouples(),
            shipped.resistors(),
            shipped.loggers(),
            List.of(battery));
    String text =
        Files.readString(HALF_INCH)
            .replace("9v-alkaline", "made-up-pack")
            .replace("\"resistance_ohm\": 100", "\"resistance_ohm\": " + resistance);
    assertThat(text).contains("made-up-pack", "\"resistance_ohm\": " + resistance);
    Checked<Design> read = DesignFile.parse(text, catalogue);
    assertThat(read.isOk()).as(read.problems().toString()).isTrue();
    return DesignSheet.of(((Checked.Ok<Design>) read).value());
  }

  private static Outcome current(String pack, String resistance) throws IOException {
    return sheet(pack, resistance).quantity(OutcomeId.BATTERY_CURRENT).orElseThrow();
  }

  private static String line(Outcome outcome) {
    Problem reason = outcome.reason().orElseThrow();
    return Messages.of(Locale.ENGLISH).line(reason);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Two lithium cells in series",
        "Lithium pack, unprotected",
        "LITHIUM polymer pack"
      })
  void aLithiumPackOfWhichNoProtectionIsKnownStops(String pack) throws IOException {
    DesignSheet sheet = sheet(pack, "100");
    Outcome current = sheet.quantity(OutcomeId.BATTERY_CURRENT).orElseThrow();
    assertThat(current.verdict()).isEqualTo(DesignVerdict.STOP);
    assertThat(current.reason().orElseThrow().id()).isEqualTo("design.lithium-unprotected");
    assertThat(current.reason().orElseThrow().isError()).isTrue();
    assertThat(sheet.stops()).isTrue();
    assertThat(line(current)).contains(pack, "Take a pack with a protection circuit");
  }

  @Test
  void aProtectedLithiumPackWarnsHowToChargeItAndDoesNotStop() throws IOException {
    DesignSheet sheet = sheet("Two lithium cells in series, protected", "100");
    Outcome current = sheet.quantity(OutcomeId.BATTERY_CURRENT).orElseThrow();
    assertThat(current.verdict()).isEqualTo(DesignVerdict.IMPROVE);
    assertThat(current.reason().orElseThrow().id()).isEqualTo("design.lithium");
    assertThat(current.reason().orElseThrow().isError()).isFalse();
    assertThat(sheet.stops()).isFalse();
    assertThat(line(current)).contains("catch fire", "never alone", "fuse");
  }

  @Test
  void aPowerBankWarnsThatItMaySleepAtASmallLoad() throws IOException {
    Outcome current = current("Pocket power bank", "100");
    assertThat(current.value().low()).isLessThan(100);
    assertThat(current.verdict()).isEqualTo(DesignVerdict.IMPROVE);
    assertThat(current.reason().orElseThrow().id()).isEqualTo("design.bank-sleeps");
    assertThat(line(current)).contains("Pocket power bank", "switch off");
  }

  @Test
  void aPowerBankAtALargerLoadIsNotSaidToSleep() throws IOException {
    Outcome current = current("Pocket power bank", "43");
    assertThat(current.value().low()).isGreaterThan(100);
    assertThat(current.reason()).isEmpty();
  }

  @Test
  void alkalineCellsGetNoWordOfLithium() throws IOException {
    assertThat(current("Six alkaline cells", "100").reason()).isEmpty();
  }
}
