package faintwind.physics.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.physics.design.Design;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PartsNeededTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");

  private static Design design(String coat) throws IOException {
    String text = Files.readString(HALF_INCH).replace("bare-polished-copper", coat);
    return DesignFile.parse(text, Library.shipped())
        .fold(
            (design, notes) -> design,
            problems -> {
              throw new AssertionError(problems);
            });
  }

  private static PartNeed part(List<PartNeed> all, PartNeed.Kind kind) {
    return all.stream().filter(p -> p.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void oneInstrumentNeedsTwoBallsOneForPracticeAndASpareOne() throws IOException {
    List<PartNeed> parts = PartsNeeded.of(design("bare-polished-copper"), 1);
    PartNeed ball = part(parts, PartNeed.Kind.BALL);
    assertThat(ball.key()).isEqualTo("ball-copper-12.7mm");
    assertThat(ball.needed()).isEqualTo(2);
    assertThat(ball.buy()).isEqualTo(4);
    assertThat(part(parts, PartNeed.Kind.RESISTOR).buy()).isEqualTo(3);
    assertThat(parts).extracting(PartNeed::kind).doesNotContain(PartNeed.Kind.PLATING);
    assertThat(parts).extracting(PartNeed::kind).isSorted();
  }

  @Test
  void nothingIsListedTwice() throws IOException {
    List<PartNeed> parts = PartsNeeded.of(design("gold"), 2);
    assertThat(parts).extracting(PartNeed::key).doesNotHaveDuplicates();
  }

  @Test
  void aClassDrillsOneBallForPracticeTogether() throws IOException {
    PartNeed balls = part(PartsNeeded.of(design("bare-polished-copper"), 10), PartNeed.Kind.BALL);
    assertThat(balls.needed()).isEqualTo(20);
    assertThat(balls.spare()).isEqualTo(1 + 5);
  }

  @Test
  void thermocoupleWireIsEnoughForTwoJunctionsThatFail() throws IOException {
    List<PartNeed> parts = PartsNeeded.of(design("bare-polished-copper"), 3);
    PartNeed wire = part(parts, PartNeed.Kind.THERMOCOUPLE);
    // pair wire for both legs of 0.6 m, each with 50 mm for a junction that fails
    assertThat(wire.needed()).isCloseTo(3 * 2 * 0.65, within(1e-12));
    assertThat(wire.buy()).isCloseTo(4.9, within(1e-12)); // 3.9 m and a quarter more
    PartNeed lead = part(parts, PartNeed.Kind.LEAD);
    assertThat(lead.needed()).isCloseTo(3 * 2 * (0.06 + 0.03), within(1e-12));
    assertThat(lead.buy()).isCloseTo(0.7, within(1e-12)); // 0.675 m
  }

  @Test
  void goldIsPlatedByTheBallAndTarnishedCopperIsNotBought() throws IOException {
    PartNeed plating = part(PartsNeeded.of(design("gold"), 2), PartNeed.Kind.PLATING);
    assertThat(plating.buy()).isEqualTo(4);
    PartNeed paint = part(PartsNeeded.of(design("white-paint"), 11), PartNeed.Kind.PAINT);
    assertThat(paint.buy()).isEqualTo(2);
  }

  @Test
  void moreInstrumentsNeverNeedLess() throws IOException {
    Design design = design("gold");
    List<PartNeed> before = PartsNeeded.of(design, 1);
    for (int n = 2; n <= 40; n++) {
      List<PartNeed> now = PartsNeeded.of(design, n);
      for (int i = 0; i < now.size(); i++) {
        assertThat(now.get(i).buy()).isGreaterThanOrEqualTo(before.get(i).buy());
        assertThat(now.get(i).buy()).isGreaterThanOrEqualTo(now.get(i).needed());
      }
      before = now;
    }
  }

  @Test
  void costAddsWhatHasAPriceAndCountsWhatHasNone() throws IOException {
    List<PartNeed> parts = PartsNeeded.of(design("bare-polished-copper"), 1);
    Prices prices = new Prices("€", Map.of("ball-copper-12.7mm", 1.25, "drill-3.3mm", 2.0));
    Prices.Cost cost = prices.of(parts);
    assertThat(cost.sum()).isCloseTo(4 * 1.25 + 2 * 2.0, within(1e-12));
    assertThat(cost.without()).isEqualTo(parts.size() - 2);
  }

  @Test
  void noInstrumentIsRefused() throws IOException {
    Design design = design("gold");
    assertThatThrownBy(() -> PartsNeeded.of(design, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("instruments = 0");
  }

  @Test
  void pricesComeBackFromTheDesignsText() throws IOException {
    Prices prices = new Prices("Kr", Map.of("drill-3.3mm", 20.5, "epoxy", 0.0));
    String text = new DesignFile.Stored(design("gold"), prices, "for the attic").text();
    Checked<DesignFile.Stored> again = DesignFile.stored(text, Library.shipped());
    assertThat(again.problems()).isEmpty();
    assertThat(again.map(DesignFile.Stored::prices)).isEqualTo(Checked.ok(prices));
    assertThat(again.map(DesignFile.Stored::note)).isEqualTo(Checked.ok("for the attic"));
  }
}
