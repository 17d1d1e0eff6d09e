package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.ui.Cellar;
import faintwind.ui.Journey;
import faintwind.ui.Waiting;
import java.io.IOException;
import java.nio.file.Path;
import javafx.event.ActionEvent;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** The four questions of plating through the window, to each stop and to the calculator. */
@ExtendWith(ApplicationExtension.class)
class PlatingJourneyTest {
  private static final String BANNER = "Local rules and a licensed plater come first";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path parent;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    journey = Journey.of(hands, parent).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  private void open() throws IOException {
    Cellar.begin("Rind 4")
        .design()
        .before("plating-needed")
        .open("plating-needed")
        .into(parent, "rind-4");
    journey.open();
    journey.openInstrument("rind-4");
    Waiting.until(() -> journey.there("#answer-needed-yes"));
  }

  private void step(FxRobot robot, String id) {
    journey.go(id);
    Waiting.until(() -> journey.there("#path-step-" + id));
    assertThat(robot.lookup("#step-banner").queryAs(Label.class).getText()).isEqualTo(BANNER);
  }

  /** Reads every caution of the step on the sheet, one by one. */
  private void cautions(String stepId) {
    Step step = ShippedChecklist.standard().step(stepId).orElseThrow();
    for (Caution caution : step.cautions()) {
      journey.fire("#caution-" + caution.id() + "-read");
      Waiting.until(() -> !journey.there("#caution-" + caution.id() + "-read"));
    }
  }

  private void answer(String question, String choice) {
    journey.fire("#answer-" + question + "-" + choice);
  }

  private boolean ends() {
    return journey.there(".ends-here");
  }

  private void home() throws IOException {
    open();
    answer("needed", "yes");
    journey.fire("#finish-step");
    Waiting.until(() -> journey.there("#answer-who-home"));
    answer("who", "home");
    answer("who-is-there", "no");
    journey.fire("#finish-step");
    Waiting.until(() -> journey.there("#caution-sheet-first-read"));
    cautions("plating-home-solution");
  }

  @Tag("long")
  @ParameterizedTest(name = "{0} = {1} ends the way")
  @CsvSource({"data-sheet, no", "cyanide, yes", "acid-bench, yes", "bath, own", "metal, aluminium"})
  void eachAnswerThatStopsEndsTheWay(String question, String choice, FxRobot robot)
      throws IOException {
    home();
    answer(question, choice);
    Waiting.until(() -> ends());
    assertThat(journey.there("#finish-step")).isFalse();
    step(robot, "plating-home-nickel");
    assertThat(journey.there("#gate")).isTrue();
    assertThat(journey.there("#step-calculator")).isFalse();
  }

  @Test
  void aClassroomEndsTheWayAtTheQuestionWhoPlates(FxRobot robot) throws IOException {
    open();
    journey.go("choose-use");
    answer("group", "yes");
    Waiting.until(() -> robot.lookup("#answer-group-yes").queryAs(RadioButton.class).isSelected());
    step(robot, "plating-needed");
    answer("needed", "yes");
    step(robot, "plating-who");
    answer("who", "home");
    Waiting.until(() -> ends());
    assertThat(robot.lookup(".ends-here").queryAs(Label.class).getText()).contains("young people");
    answer("who", "plater");
    Waiting.until(() -> !ends());
  }

  @Test
  void theOpenWayLeadsOverTenCautionsToTheCalculator(FxRobot robot) throws IOException {
    home();
    answer("data-sheet", "yes");
    answer("cyanide", "no");
    answer("acid-bench", "no");
    answer("bath", "bought");
    answer("metal", "copper");
    journey.fire("#finish-step");
    Waiting.until(() -> journey.there("#caution-ventilation-read"));
    step(robot, "plating-home-nickel");
    assertThat(journey.there(".covered")).isTrue();
    step(robot, "plating-home-cautions");
    cautions("plating-home-cautions");
    journey.fire("#finish-step");
    Waiting.until(() -> journey.there("#caution-nickel-again-read"));
    assertThat(journey.there("#step-calculator")).isFalse();
    cautions("plating-home-nickel");
    Waiting.until(() -> journey.there("#step-calculator"));
    type(robot, "thickness", "5");
    type(robot, "density", "2");
    type(robot, "efficiency", "100");
    // 5 µm of nickel on a 12.7 mm ball at 2 A/dm²: 101.3 mA and 12.20 min (recomputed, Faraday)
    assertThat(said(robot, "current")).isEqualTo("101 mA");
    assertThat(said(robot, "time-needed")).isEqualTo("12.2 min");
    journey.picture("plating-calculator");
    type(robot, "room", "0.0001");
    assertThat(journey.there("#plating-current")).isFalse();
    type(robot, "room", "0.1");
    assertThat(said(robot, "hydrogen")).contains("0.1 m³");
    journey.fire("#plating-why-charge");
    Waiting.until(() -> journey.there("#note"));
    assertThat(robot.lookup("#note").query().getAccessibleText()).contains("Faraday");
  }

  private static void type(FxRobot robot, String field, String text) {
    robot.interact(
        () -> {
          TextField box = robot.lookup("#plating-" + field).queryAs(TextField.class);
          box.setText(text);
          box.getOnAction().handle(new ActionEvent());
        });
  }

  private static String said(FxRobot robot, String outcome) {
    return robot
        .lookup("#plating-" + outcome)
        .queryAs(Label.class)
        .getText()
        .replace('\u00a0', ' ');
  }
}
