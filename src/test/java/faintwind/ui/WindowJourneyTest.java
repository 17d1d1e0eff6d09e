package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.WindowChoices;
import faintwind.message.Messages;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.make.StepScreen;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
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

  @SuppressWarnings("NullAway.Init") // each test opens its window
  private Stage stage;

  @SuppressWarnings("NullAway.Init")
  private FaintwindWindow window;

  private void openWindow(FxRobot robot) {
    robot.interact(
        () -> {
          FaintwindApp.dressProgram();
          stage = new Stage();
          window =
              new FaintwindWindow(
                  stage,
                  Messages.of(Locale.ENGLISH),
                  KeptLook.in(folder),
                  Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC));
          window.show();
        });
  }

  @AfterEach
  void close(FxRobot robot) {
    robot.interact(() -> stage.close());
  }

  private void asked() throws IOException {
    new WindowChoices(100, "light", false, "Ida").write(folder);
  }

  private InstrumentState state(String instrument) throws IOException {
    return new InstrumentFolder(folder.resolve(instrument)).open().state();
  }

  private static boolean there(FxRobot robot, String id) {
    return robot.lookup(id).tryQuery().filter(Node::isVisible).isPresent();
  }

  private static void press(FxRobot robot, KeyCode... keys) {
    robot.press(keys);
    for (int i = keys.length - 1; i >= 0; i--) {
      robot.release(keys[i]);
    }
  }

  private static String words(FxRobot robot, String id) {
    return robot.lookup(id).queryAs(Label.class).getText();
  }

  private void open(FxRobot robot, String instrument) {
    Waiting.until(() -> there(robot, "#instrument-" + instrument));
    robot.doubleClickOn("#instrument-" + instrument);
    Waiting.until(() -> there(robot, "#step-title"));
  }

  @Test
  void newInstrumentIsBegunWithTheKeyboardOnly(FxRobot robot) throws IOException {
    openWindow(robot);
    press(robot, KeyCode.CONTROL, KeyCode.ENTER);
    Waiting.until(() -> there(robot, "#start-parts"));
    press(robot, KeyCode.CONTROL, KeyCode.ENTER);
    Waiting.until(() -> there(robot, "#new-name"));
    robot.write("Rind 7");
    press(robot, KeyCode.TAB);
    robot.write("Ida");
    press(robot, KeyCode.CONTROL, KeyCode.ENTER);
    Waiting.until(() -> there(robot, "#design-title"));
    press(robot, KeyCode.CONTROL, KeyCode.DIGIT2);
    Waiting.until(() -> there(robot, "#step-title"));
    assertThat(state("rind-7").last(InstrumentCreated.class).orElseThrow().who()).isEqualTo("Ida");
    // the first question is answered with the space bar, the next step opened with Alt+Down
    Waiting.until(() -> stage.getScene().getFocusOwner().getId().startsWith("answer-place-"));
    press(robot, KeyCode.SPACE);
    Waiting.until(() -> !words(robot, "#next-sentence").startsWith("Where"));
    String first = words(robot, "#step-title");
    press(robot, KeyCode.ALT, KeyCode.DOWN);
    Waiting.until(() -> !words(robot, "#step-title").equals(first));
  }

  @Test
  void reopeningComesBackToTheSameStep(FxRobot robot) throws IOException {
    asked();
    Cellar.begin("Rind 2").design().before("heater-insulation").into(folder, "rind-2");
    openWindow(robot);
    open(robot, "rind-2");
    press(robot, KeyCode.ALT, KeyCode.DOWN);
    press(robot, KeyCode.ALT, KeyCode.DOWN);
    Waiting.until(() -> true);
    String title = words(robot, "#step-title");
    Waiting.until(() -> stepOnDisk("rind-2").equals(stepShown()));
    robot.interact(() -> stage.close());
    openWindow(robot);
    open(robot, "rind-2");
    assertThat(words(robot, "#step-title")).isEqualTo(title);
  }

  private String stepShown() {
    return ((StepScreen) window.screen().orElseThrow()).stepId();
  }

  private String stepOnDisk(String instrument) {
    try {
      return state(instrument)
          .last(faintwind.record.Event.StepOpened.class)
          .orElseThrow()
          .step()
          .orElseThrow();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Types the three readings of the heater against its ball, the first as given. */
  private void insulation(FxRobot robot, String leadA) throws IOException {
    asked();
    Cellar.begin("Rind 2")
        .design()
        .before("heater-insulation")
        .open("heater-insulation")
        .cautions("heater-insulation")
        .into(folder, "rind-2");
    openWindow(robot);
    open(robot, "rind-2");
    robot.clickOn("#reading-lead-a-ball").write(leadA);
    press(robot, KeyCode.TAB);
    robot.write("OL 20M");
    press(robot, KeyCode.TAB);
    robot.write("100,3");
    press(robot, KeyCode.TAB);
  }

  @Test
  void aStopCannotBeWaived(FxRobot robot) throws IOException {
    insulation(robot, "420k");
    Waiting.until(() -> there(robot, "#measure-again"));
    assertThat(there(robot, "#waive")).isFalse();
    assertThat(there(robot, "#finish-step")).isFalse();
    assertThat(words(robot, "#reading-lead-a-ball-understood"))
        .contains("420\u202f000")
        .contains("0.42");
  }

  @Test
  void aDoubtfulReadingIsWaivedByNameAndReason(FxRobot robot) throws IOException {
    insulation(robot, "6M");
    Waiting.until(() -> there(robot, "#waive"));
    assertThat(there(robot, "#finish-step")).isFalse();
    List<String> typed =
        state("rind-2").standing(ReadingEntered.class, "heater-insulation").stream()
            .map(line -> line.event().typed())
            .toList();
    assertThat(typed).containsExactly("6M", "OL 20M", "100,3");
    robot.interact(
        () -> robot.lookup("#waive").queryAs(javafx.scene.control.Hyperlink.class).fire());
    assertThat(robot.lookup("#waiver-go").queryAs(Button.class).isDisabled()).isTrue();
    robot.interact(() -> robot.lookup("#waiver-name").query().requestFocus());
    robot.write("Ida");
    assertThat(robot.lookup("#waiver-go").queryAs(Button.class).isDisabled()).isTrue();
    press(robot, KeyCode.TAB);
    robot.write("meter is borrowed");
    press(robot, KeyCode.ENTER);
    assertThat(state("rind-2").standing(Waived.class)).as("Enter alone never waives").isEmpty();
    robot.interact(() -> robot.lookup("#waiver-go").queryAs(Button.class).fire());
    Waiting.until(() -> !there(robot, "#waive") && !there(robot, "#waiver-go"));
    assertThat(state("rind-2").standing(Waived.class)).hasSize(1);
    assertThat(robot.lookup("#step-notices .label").queryAs(Label.class).getText())
        .contains("Ida")
        .contains("meter is borrowed");
  }

  @Test
  void cautionsCoverTheInstructionUntilEachIsAnswered(FxRobot robot) throws IOException {
    asked();
    Cellar.begin("Rind 2")
        .design()
        .before("glue-heater")
        .open("glue-heater")
        .into(folder, "rind-2");
    openWindow(robot);
    open(robot, "rind-2");
    Waiting.until(() -> there(robot, "#step-cautions"));
    int cautions = robot.lookup("#step-cautions .caution").queryAll().size();
    assertThat(cautions).isGreaterThan(1);
    for (int left = cautions; left > 0; left--) {
      assertThat(robot.lookup(".covered").tryQuery()).isPresent();
      int before = left;
      robot.interact(
          () ->
              robot
                  .lookup("#step-cautions .button")
                  .queryAllAs(Button.class)
                  .iterator()
                  .next()
                  .fire());
      Waiting.until(() -> robot.lookup("#step-cautions .button").queryAll().size() < before);
    }
    assertThat(robot.lookup(".covered").tryQuery()).isEmpty();
    assertThat(state("rind-2").standing(CautionAcknowledged.class, "glue-heater"))
        .hasSize(cautions)
        .allMatch(line -> line.who().equals("Ida"));
  }

  @Test
  void whatCouldBeTwoNumbersIsAskedAndAWrongOneStays(FxRobot robot) throws IOException {
    asked();
    Cellar.begin("Rind 2").design().before("weigh-blanks").open("weigh-blanks").into(folder, "r2");
    openWindow(robot);
    open(robot, "r2");
    robot.clickOn("#reading-blank-a").write("1,200");
    press(robot, KeyCode.TAB);
    Waiting.until(() -> there(robot, "#reading-blank-a-choice-1"));
    assertThat(there(robot, "#reading-blank-a-choice-2")).isTrue();
    assertThat(state("r2").standing(ReadingEntered.class, "weigh-blanks")).isEmpty();
    robot.write("4o2");
    press(robot, KeyCode.TAB);
    Waiting.until(() -> words(robot, "#reading-blank-b-understood").contains("is not a number"));
    assertThat(robot.lookup("#reading-blank-b").queryTextInputControl().getText()).isEqualTo("4o2");
  }

  @Test
  void correctingStrikesTheEarlierEntry(FxRobot robot) throws IOException {
    asked();
    Cellar.begin("Rind 2")
        .design()
        .before("weigh-blanks")
        .open("weigh-blanks")
        .type("weigh-blanks", "blank-a", "9.75")
        .into(folder, "r2");
    openWindow(robot);
    open(robot, "r2");
    robot.interact(() -> robot.lookup("#reading-blank-a").query().requestFocus());
    press(robot, KeyCode.F2);
    press(robot, KeyCode.CONTROL, KeyCode.A);
    robot.write("9.57");
    press(robot, KeyCode.TAB);
    Waiting.until(() -> history("r2").size() == 2 && history("r2").get(1));
    assertThat(history("r2")).containsExactly(false, true);
    press(robot, KeyCode.CONTROL, KeyCode.DIGIT6);
    Waiting.until(() -> there(robot, "#ledger"));
    assertThat(robot.lookup("#ledger .struck").queryAs(Label.class).getText()).contains("9.75");
  }

  /** Whether each entry of blank A stands. */
  private List<Boolean> history(String instrument) {
    try {
      return state(instrument).history("weigh-blanks", "blank-a").stream()
          .map(line -> line.stands())
          .toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void nothingHoldsTheWindowForATenthOfASecond(FxRobot robot) throws IOException {
    asked();
    Cellar.begin("Rind 2").design().before("heater-insulation").into(folder, "rind-2");
    openWindow(robot);
    open(robot, "rind-2");
    SlowestPulse pulse = new SlowestPulse();
    pulse.start();
    // once round, so that classes are loaded and compiled, as after the first minute of use
    walk(robot);
    walk(robot);
    pulse.forget();
    walk(robot);
    assertThat(pulse.slowest_ms()).as("busiest stretch of the JavaFX thread, ms").isLessThan(100);
    System.getLogger("journey")
        .log(System.Logger.Level.INFO, "slowest pulse {0} ms", pulse.slowest_ms());
  }

  private void walk(FxRobot robot) {
    press(robot, KeyCode.ALT, KeyCode.UP);
    Waiting.until(() -> true);
    press(robot, KeyCode.ALT, KeyCode.DOWN);
    Waiting.until(() -> true);
    press(robot, KeyCode.CONTROL, KeyCode.DIGIT6);
    Waiting.until(() -> there(robot, "#ledger"));
    press(robot, KeyCode.CONTROL, KeyCode.DIGIT2);
    Waiting.until(() -> there(robot, "#step-title"));
    press(robot, KeyCode.F1);
    press(robot, KeyCode.ESCAPE);
    Waiting.until(() -> true);
  }
}
