package faintwind.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Tips;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.framework.junit5.ApplicationExtension;

@Tag("long")
@ExtendWith(ApplicationExtension.class)
class PictureViewTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  static Stream<Arguments> readings() {
    return CHECKLIST.steps().stream()
        .flatMap(step -> step.asks().readings().stream())
        .filter(reading -> reading.tips().isPresent())
        .map(reading -> Arguments.of(reading.id(), reading));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("readings")
  void everyReadingHasADrawingOfWhereTheTipsGo(String id, Reading reading) {
    Tips tips = reading.tips().orElseThrow();
    assertThat(
            PictureView.ofTips(
                tips.scene(), tips.one().word(), tips.other().word(), reading.unit(), "shown"))
        .as("tips-%s.svg has both points", tips.scene())
        .isPresent();
  }

  @Test
  void everyReadingOfTheInsulationStageSaysWhereTheTipsGo() {
    for (Step step : CHECKLIST.stepsOfGate("heater-power")) {
      step.asks().readings().stream()
          // the meter's own check and the bare supply have no place on the pair
          .filter(r -> !r.id().startsWith("meter-") && !r.id().equals("supply-open"))
          .forEach(r -> assertThat(r.tips()).as(r.id()).isPresent());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\"/>",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 wide high\"/>",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><circle r=\"5px\"/></svg>"
      })
  void anOwnDrawingThatCannotBeReadIsLeftOut(String text, @TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("own.svg"), text);
    assertThat(PictureView.ofFile(file, "mine")).isEmpty();
    assertThat(PictureView.ofFile(folder.resolve("none.svg"), "mine")).isEmpty();
  }

  @Test
  void anOwnDrawingIsShown(@TempDir Path folder) throws IOException {
    String text =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><circle r=\"5\"/></svg>";
    Path file = Files.writeString(folder.resolve("own.svg"), text);
    assertThat(PictureView.ofFile(file, "mine").orElseThrow().getAccessibleText())
        .isEqualTo("mine");
  }
}
