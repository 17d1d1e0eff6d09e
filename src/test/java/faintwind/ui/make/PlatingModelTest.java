package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.design.KeptDesigns;
import faintwind.message.Messages;
import faintwind.physics.plating.Deposit;
import faintwind.ui.Cellar;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PlatingModelTest {
  private PlatingModel plating;

  @BeforeEach
  void ofTheSampleDesign() throws IOException {
    plating =
        new PlatingModel(
            Messages.of(Locale.ENGLISH),
            KeptDesigns.withShippedParts()
                .sized(Cellar.resource("/design/half-inch-copper.json"))
                .orElseThrow()
                .design());
  }

  private PlatingModel.Field field(String id) {
    return plating.fields().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void theAreaIsThatOfOneBall() {
    // π · 12.7 mm · 12.7 mm = 5.07 cm², by hand
    assertThat(field("area").number().typed().get()).startsWith("5.07");
  }

  @Test
  void everyOutcomeFollowsFromWhatIsTyped() {
    assertThat(plating.outcomes().get())
        .isNotEmpty()
        .allSatisfy(o -> assertThat(o.value()).isNotBlank());
    var before = plating.outcomes().get();
    field("density").number().typed().set("2");
    field("density").number().judge();
    assertThat(plating.outcomes().get()).isNotEqualTo(before);
  }

  @Test
  void whatIsNoNumberGivesNoOutcome() {
    field("time").number().typed().set("soon");
    field("time").number().judge();
    assertThat(plating.outcomes().get()).noneMatch(o -> o.value().contains("NaN"));
  }

  @Test
  void goldTakesItsOwnUsualEfficiency() {
    String nickel = field("density").number().typed().get();
    plating.deposit().set(Deposit.GOLD);
    assertThat(field("density").number().typed().get()).isNotEqualTo(nickel);
  }
}
