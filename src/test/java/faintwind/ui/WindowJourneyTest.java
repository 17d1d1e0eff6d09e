package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.record.Event;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Waived;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Whole paths through the window by ids, as a person walks them. */
@ExtendWith(ApplicationExtension.class)
class WindowJourneyTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) {
    journey = Journey.of(hands, folder);
  }

  @AfterEach
  void close() {
    journey.close();
  }

  @Test
  void newInstrumentIsBegunWithTheKeyboardOnly(FxRobot robot) throws IOException {
    journey.open();
    journey.settle();
    journey.press(KeyCode.CONTROL, KeyCode.ENTER);
    Waiting.until(() -> journey.there("#start-parts"));
    journey.settle();
    journey.press(KeyCode.CONTROL, KeyCode.ENTER);
    Waiting.until(() -> journey.there("#new-name"));
    robot.write("Rind 7");
    journey.press(KeyCode.TAB);
    robot.write("Ida");
    journey.settle();
    journey.press(KeyCode.CONTROL, KeyCode.ENTER);
    Waiting.until(() -> journey.there("#design-title"));
    journey.press(KeyCode.CONTROL, KeyCode.DIGIT2);
    Waiting.until(() -> journey.there("#step-title"));
    assertThat(journey.state("rind-7").last(InstrumentCreated.class).orElseThrow().who())
        .isEqualTo("Ida");
    // the first question is answered with the space bar, the next step opened with Alt+Down
    Waiting.until(
        () -> journey.stage().getScene().getFocusOwner().getId().startsWith("answer-place-"));
    journey.press(KeyCode.SPACE);
    Waiting.until(() -> !journey.words("#next-sentence").startsWith("Where"));
    String first = journey.words("#step-title");
    journey.press(KeyCode.ALT, KeyCode.DOWN);
    Waiting.until(() -> !journey.words("#step-title").equals(first));
  }

  @Test
  void reopeningComesBackToTheSameStep(FxRobot robot) throws IOException {
    journey.asked();
    Cellar.begin("Rind 2").design().before("heater-insulation").into(folder, "rind-2");
    journey.open();
    journey.openInstrument("rind-2");
    journey.press(KeyCode.ALT, KeyCode.DOWN);
    journey.press(KeyCode.ALT, KeyCode.DOWN);
    Waiting.until(() -> true);
    String title = journey.words("#step-title");
    Waiting.until(() -> stepOnDisk("rind-2").equals(journey.stepId()));
    journey.close();
    journey.open();
    journey.openInstrument("rind-2");
    assertThat(journey.words("#step-title")).isEqualTo(title);
  }

  private String stepOnDisk(String instrument) {
    return journey
        .state(instrument)
        .last(Event.StepOpened.class)
        .orElseThrow()
        .step()
        .orElseThrow();
  }

  /** Types the three readings of the heater against its ball, the first as given. */
  private void insulation(FxRobot robot, String leadA) throws IOException {
    journey.asked();
    Cellar.begin("Rind 2")
        .design()
        .before("heater-insulation")
        .open("heater-insulation")
        .cautions("heater-insulation")
        .into(folder, "rind-2");
    journey.open();
    journey.openInstrument("rind-2");
    // the field lies below the instruction: it is reached as by scrolling
    robot.interact(() -> robot.lookup("#reading-lead-a-ball").query().requestFocus());
    robot.write(leadA);
    journey.press(KeyCode.TAB);
    robot.write("OL 20M");
    journey.press(KeyCode.TAB);
    robot.write("100,3");
    journey.press(KeyCode.TAB);
  }

  @Test
  void aStopCannotBeWaived(FxRobot robot) throws IOException {
    insulation(robot, "420k");
    Waiting.until(() -> journey.there("#measure-again"));
    assertThat(journey.there("#waive")).isFalse();
    assertThat(journey.there("#finish-step")).isFalse();
    assertThat(journey.words("#reading-lead-a-ball-understood"))
        .contains("420\u202f000")
        .contains("0.42");
  }

  @Test
  void aDoubtfulReadingIsWaivedByNameAndReason(FxRobot robot) throws IOException {
    insulation(robot, "6M");
    Waiting.until(() -> journey.there("#waive"));
    assertThat(journey.there("#finish-step")).isFalse();
    List<String> typed =
        journey.state("rind-2").standing(ReadingEntered.class, "heater-insulation").stream()
            .map(line -> line.event().typed())
            .toList();
    assertThat(typed).containsExactly("6M", "OL 20M", "100,3");
    robot.interact(() -> robot.lookup("#waive").queryAs(Hyperlink.class).fire());
    assertThat(robot.lookup("#waiver-go").queryAs(Button.class).isDisabled()).isTrue();
    robot.interact(() -> robot.lookup("#waiver-name").query().requestFocus());
    robot.write("Ida");
    assertThat(robot.lookup("#waiver-go").queryAs(Button.class).isDisabled()).isTrue();
    journey.press(KeyCode.TAB);
    robot.write("meter is borrowed");
    journey.press(KeyCode.ENTER);
    assertThat(journey.state("rind-2").standing(Waived.class))
        .as("Enter alone never waives")
        .isEmpty();
    robot.interact(() -> robot.lookup("#waiver-go").queryAs(Button.class).fire());
    Waiting.until(() -> !journey.there("#waive") && !journey.there("#waiver-go"));
    assertThat(journey.state("rind-2").standing(Waived.class)).hasSize(1);
    assertThat(robot.lookup("#step-notices .label").queryAs(Label.class).getText())
        .contains("Ida")
        .contains("meter is borrowed");
  }

  @Test
  void cautionsCoverTheInstructionUntilEachIsAnswered(FxRobot robot) throws IOException {
    journey.asked();
    Cellar.begin("Rind 2")
        .design()
        .before("glue-heater")
        .open("glue-heater")
        .into(folder, "rind-2");
    journey.open();
    journey.openInstrument("rind-2");
    Waiting.until(() -> journey.there("#step-cautions"));
    List<Caution> all = ShippedChecklist.standard().step("glue-heater").orElseThrow().cautions();
    int cautions = all.size();
    assertThat(cautions).isGreaterThan(1);
    for (Caution caution : all) {
      assertThat(robot.lookup(".covered").tryQuery()).isPresent();
      String read = "#caution-" + caution.id() + "-read";
      Waiting.until(() -> journey.there(read));
      journey.fire(read);
      Waiting.until(() -> !journey.there(read));
    }
    assertThat(robot.lookup(".covered").tryQuery()).isEmpty();
    assertThat(journey.state("rind-2").standing(CautionAcknowledged.class, "glue-heater"))
        .hasSize(cautions)
        .allMatch(line -> line.who().equals("Ida"));
  }

  @Test
  void whatCouldBeTwoNumbersIsAskedAndAWrongOneStays(FxRobot robot) throws IOException {
    journey.asked();
    Cellar.begin("Rind 2").design().before("weigh-blanks").open("weigh-blanks").into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    robot.clickOn("#reading-blank-a").write("1,200");
    journey.press(KeyCode.TAB);
    Waiting.until(() -> journey.there("#reading-blank-a-choice-1"));
    assertThat(journey.there("#reading-blank-a-choice-2")).isTrue();
    assertThat(journey.state("r2").standing(ReadingEntered.class, "weigh-blanks")).isEmpty();
    robot.write("4o2");
    journey.press(KeyCode.TAB);
    Waiting.until(() -> journey.words("#reading-blank-b-understood").contains("is not a number"));
    assertThat(robot.lookup("#reading-blank-b").queryTextInputControl().getText()).isEqualTo("4o2");
  }

  @Test
  void correctingStrikesTheEarlierEntry(FxRobot robot) throws IOException {
    journey.asked();
    Cellar.begin("Rind 2")
        .design()
        .before("weigh-blanks")
        .open("weigh-blanks")
        .type("weigh-blanks", "blank-a", "9.75")
        .into(folder, "r2");
    journey.open();
    journey.openInstrument("r2");
    robot.interact(() -> robot.lookup("#reading-blank-a").query().requestFocus());
    journey.press(KeyCode.F2);
    journey.press(KeyCode.CONTROL, KeyCode.A);
    robot.write("9.57");
    journey.press(KeyCode.TAB);
    Waiting.until(() -> history("r2").size() == 2 && history("r2").get(1));
    assertThat(history("r2")).containsExactly(false, true);
    journey.press(KeyCode.CONTROL, KeyCode.DIGIT6);
    Waiting.until(() -> journey.there("#ledger"));
    assertThat(robot.lookup("#ledger .struck").queryAs(Label.class).getText()).contains("9.75");
  }

  /** Whether each entry of blank A stands. */
  private List<Boolean> history(String instrument) {
    return journey.state(instrument).history("weigh-blanks", "blank-a").stream()
        .map(line -> line.stands())
        .toList();
  }

  @Test
  void nothingHoldsTheWindowForATenthOfASecond(FxRobot robot) throws IOException {
    journey.asked();
    Cellar.begin("Rind 2").design().before("heater-insulation").into(folder, "rind-2");
    journey.open();
    journey.openInstrument("rind-2");
    SlowestPulse pulse = new SlowestPulse();
    pulse.start();
    // once round, so that classes are loaded and compiled, as after the first minute of use
    walk();
    walk();
    pulse.forget();
    walk();
    assertThat(pulse.slowest_ms()).as("busiest stretch of the JavaFX thread, ms").isLessThan(100);
    System.getLogger("journey")
        .log(System.Logger.Level.INFO, "slowest pulse {0} ms", pulse.slowest_ms());
  }

  private void walk() {
    journey.press(KeyCode.ALT, KeyCode.UP);
    Waiting.until(() -> true);
    journey.press(KeyCode.ALT, KeyCode.DOWN);
    Waiting.until(() -> true);
    journey.press(KeyCode.CONTROL, KeyCode.DIGIT6);
    Waiting.until(() -> journey.there("#ledger"));
    journey.press(KeyCode.CONTROL, KeyCode.DIGIT2);
    Waiting.until(() -> journey.there("#step-title"));
    journey.press(KeyCode.F1);
    journey.press(KeyCode.ESCAPE);
    Waiting.until(() -> true);
  }
}
