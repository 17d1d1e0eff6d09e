package faintwind.physics.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.part.BatteryType;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Cells;
import faintwind.physics.part.Cells.Chemistry;
import faintwind.physics.part.Label;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the sheet says of a pack by its cells, each a made-up part of the library. */
class SourceSheetTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");
  private static final double FRESH_V = 8.4;

  /** The half-inch design with its battery exchanged for a pack of these cells. */
  private static DesignSheet sheet(String pack, Cells cells, String resistance) throws IOException {
    BatteryType.Capacity capacity = new BatteryType.Capacity(0.2, new Interval(7200, 9000, 10800));
    Label label = new Label("made-up-pack", pack, "made up");
    BatteryType battery = new BatteryType(label, FRESH_V, 6, List.of(capacity), cells);
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

  private static Cells cells(Chemistry chemistry, boolean isProtected) {
    return new Cells(chemistry, isProtected, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Outcome outcome(OutcomeId id, String pack, Cells cells) throws IOException {
    return sheet(pack, cells, "100").quantity(id).orElseThrow();
  }

  private static String line(Outcome outcome) {
    return Messages.of(Locale.ENGLISH).line(outcome.reason().orElseThrow());
  }

  /** The name does not matter: what the cells are stands in the pack's file. */
  @ParameterizedTest
  @CsvSource({
    "Two cells in series, LITHIUM_ION",
    "LiPo 2S, LITHIUM_POLYMER",
    "unprotected lithium power bank, LITHIUM_ION",
    "'Li-ion pack, protected', LITHIUM_ION",
    "LiFePO4, LITHIUM_IRON_PHOSPHATE",
    "Camera battery, LITHIUM_PRIMARY"
  })
  void aLithiumPackWithoutProtectionOnRecordStops(String pack, Chemistry chemistry)
      throws IOException {
    Cells asleep = new Cells(chemistry, false, OptionalDouble.of(0.2), OptionalDouble.empty());
    for (Cells cells : List.of(cells(chemistry, false), asleep)) {
      DesignSheet sheet = sheet(pack, cells, "100");
      Outcome fresh = sheet.quantity(OutcomeId.BATTERY_FRESH).orElseThrow();
      assertThat(fresh.verdict()).isEqualTo(DesignVerdict.STOP);
      assertThat(fresh.reason().orElseThrow().id()).isEqualTo("design.lithium-unprotected");
      assertThat(sheet.stops()).isTrue();
      assertThat(line(fresh)).contains(pack, "Choose a pack with a protection circuit");
    }
  }

  @Test
  void aPackWhoseCellsAreNotRecordedStopsAndSaysWhatToAdd() throws IOException {
    Outcome fresh =
        outcome(OutcomeId.BATTERY_FRESH, "Old pack", cells(Chemistry.NOT_RECORDED, true));
    assertThat(fresh.verdict()).isEqualTo(DesignVerdict.STOP);
    assertThat(line(fresh)).contains("Old pack", "Add \"chemistry\" to made-up-pack.json");
  }

  @Test
  void aProtectedLithiumPackWarnsHowToChargeItAndDoesNotStop() throws IOException {
    DesignSheet sheet = sheet("Two cells in series", cells(Chemistry.LITHIUM_ION, true), "100");
    Outcome fresh = sheet.quantity(OutcomeId.BATTERY_FRESH).orElseThrow();
    assertThat(fresh.verdict()).isEqualTo(DesignVerdict.IMPROVE);
    assertThat(fresh.reason().orElseThrow().id()).isEqualTo("design.lithium");
    assertThat(sheet.stops()).isFalse();
    assertThat(line(fresh)).contains("catch fire", "never unattended", "fuse");
  }

  @Test
  void cellsThatCannotBeChargedSaySo() throws IOException {
    Outcome fresh =
        outcome(OutcomeId.BATTERY_FRESH, "Camera cell", cells(Chemistry.LITHIUM_PRIMARY, true));
    assertThat(line(fresh)).contains("Never charge them");
  }

  @ParameterizedTest
  @EnumSource(
      value = Chemistry.class,
      names = {"ALKALINE", "ZINC_CARBON", "NICKEL_METAL_HYDRIDE"})
  void otherCellsGetNoWordOfLithiumWhateverTheirName(Chemistry chemistry) throws IOException {
    Outcome fresh =
        outcome(OutcomeId.BATTERY_FRESH, "Better than lithium", cells(chemistry, false));
    assertThat(fresh.reason()).isEmpty();
  }

  @Test
  void aPackThatSleepsAtASmallLoadWarns() throws IOException {
    Cells sleeper =
        new Cells(Chemistry.LITHIUM_ION, true, OptionalDouble.of(0.1), OptionalDouble.empty());
    Outcome current = outcome(OutcomeId.BATTERY_CURRENT, "Pocket bank", sleeper);
    assertThat(current.value().low()).isLessThan(100);
    assertThat(current.verdict()).isEqualTo(DesignVerdict.IMPROVE);
    assertThat(line(current)).contains("Pocket bank", "below about 100 mA");
    DesignSheet larger = sheet("Pocket bank", sleeper, "43");
    assertThat(larger.quantity(OutcomeId.BATTERY_CURRENT).orElseThrow().reason()).isEmpty();
  }

  @Test
  void aPackThatMayNotGiveTheCurrentStops() throws IOException {
    Cells weak =
        new Cells(Chemistry.ALKALINE, false, OptionalDouble.empty(), OptionalDouble.of(0.04));
    Outcome current = outcome(OutcomeId.BATTERY_CURRENT, "Button cells", weak);
    assertThat(current.verdict()).isEqualTo(DesignVerdict.STOP);
    assertThat(line(current)).contains("Button cells", "40 mA", "Choose a larger pack");
  }

  @Test
  void everyShippedPackSaysWhatItsCellsAre() throws IOException {
    assertThat(Library.shipped().batteries())
        .isNotEmpty()
        .allSatisfy(
            pack -> {
              assertThat(pack.cells().chemistry()).isNotEqualTo(Chemistry.NOT_RECORDED);
              assertThat(pack.cells().most_A()).isPresent();
              boolean stops = SourceSheet.cells(pack).verdict() == DesignVerdict.STOP;
              assertThat(stops).isEqualTo(pack.label().name().endsWith("without protection"));
            });
  }
}
