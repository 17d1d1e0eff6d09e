package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.job.WindowChoices;
import faintwind.message.Messages;
import faintwind.ui.Cellar;
import faintwind.ui.FaintwindApp;
import faintwind.ui.FaintwindWindow;
import faintwind.ui.Pictures;
import faintwind.ui.Waiting;
import faintwind.ui.frame.KeptLook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
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

  @SuppressWarnings("NullAway.Init") // each test opens its window
  private Stage stage;

  @SuppressWarnings("NullAway.Init")
  private FaintwindWindow window;

  private void open(FxRobot robot) throws IOException {
    new WindowChoices(100, "light", false, "Ida").write(parent);
    Cellar.begin("Rind 4")
        .design()
        .before("plating-needed")
        .open("plating-needed")
        .into(parent, "rind-4");
    robot.interact(
        () -> {
          FaintwindApp.dressProgram();
          stage = new Stage();
          window =
              new FaintwindWindow(
                  stage,
                  Messages.of(Locale.ENGLISH),
                  KeptLook.in(parent),
                  Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC));
          window.show();
        });
    Waiting.until(() -> there(robot, "#instrument-rind-4"));
    robot.doubleClickOn("#instrument-rind-4");
    Waiting.until(() -> there(robot, "#answer-needed-yes"));
  }

  @AfterEach
  void close(FxRobot robot) {
    robot.interact(() -> stage.close());
  }

  private static boolean there(FxRobot robot, String id) {
    return robot.lookup(id).tryQuery().filter(node -> node.isVisible()).isPresent();
  }

  private static void fire(FxRobot robot, String id) {
    Waiting.until(() -> there(robot, id));
    robot.interact(() -> robot.lookup(id).queryAs(ButtonBase.class).fire());
  }

  private void step(FxRobot robot, String id) {
    robot.interact(() -> ((StepScreen) window.screen().orElseThrow()).openStep(id));
    Waiting.until(() -> there(robot, "#path-step-" + id));
    assertThat(robot.lookup("#step-banner").queryAs(Label.class).getText()).isEqualTo(BANNER);
  }

  /** Reads every caution of the step on the sheet, one by one. */
  private static void cautions(FxRobot robot, String stepId) {
    Step step = ShippedChecklist.standard().step(stepId).orElseThrow();
    for (Caution caution : step.cautions()) {
      fire(robot, "#caution-" + caution.id() + "-read");
      Waiting.until(() -> !there(robot, "#caution-" + caution.id() + "-read"));
    }
  }

  private static void answer(FxRobot robot, String question, String choice) {
    fire(robot, "#answer-" + question + "-" + choice);
  }

  private static boolean ends(FxRobot robot) {
    return there(robot, ".ends-here");
  }

  private void home(FxRobot robot) throws IOException {
    open(robot);
    answer(robot, "needed", "yes");
    fire(robot, "#finish-step");
    Waiting.until(() -> there(robot, "#answer-who-home"));
    answer(robot, "who", "home");
    answer(robot, "who-is-there", "no");
    fire(robot, "#finish-step");
    Waiting.until(() -> there(robot, "#caution-sheet-first-read"));
    cautions(robot, "plating-home-solution");
  }

  @ParameterizedTest(name = "{0} = {1} ends the way")
  @CsvSource({"data-sheet, no", "cyanide, yes", "acid-bench, yes", "bath, own", "metal, aluminium"})
  void eachAnswerThatStopsEndsTheWay(String question, String choice, FxRobot robot)
      throws IOException {
    home(robot);
    answer(robot, question, choice);
    Waiting.until(() -> ends(robot));
    assertThat(there(robot, "#finish-step")).isFalse();
    step(robot, "plating-home-nickel");
    assertThat(there(robot, "#gate")).isTrue();
    assertThat(there(robot, "#step-calculator")).isFalse();
  }

  @Test
  void aClassroomEndsTheWayAtTheQuestionWhoPlates(FxRobot robot) throws IOException {
    open(robot);
    robot.interact(() -> ((StepScreen) window.screen().orElseThrow()).openStep("choose-use"));
    answer(robot, "group", "yes");
    Waiting.until(
        () ->
            robot
                .lookup("#answer-group-yes")
                .queryAs(javafx.scene.control.RadioButton.class)
                .isSelected());
    step(robot, "plating-needed");
    answer(robot, "needed", "yes");
    step(robot, "plating-who");
    answer(robot, "who", "home");
    Waiting.until(() -> ends(robot));
    assertThat(robot.lookup(".ends-here").queryAs(Label.class).getText()).contains("young people");
    answer(robot, "who", "plater");
    Waiting.until(() -> !ends(robot));
  }

  @Test
  void theOpenWayLeadsOverTenCautionsToTheCalculator(FxRobot robot) throws IOException {
    home(robot);
    answer(robot, "data-sheet", "yes");
    answer(robot, "cyanide", "no");
    answer(robot, "acid-bench", "no");
    answer(robot, "bath", "bought");
    answer(robot, "metal", "copper");
    fire(robot, "#finish-step");
    Waiting.until(() -> there(robot, "#caution-ventilation-read"));
    step(robot, "plating-home-nickel");
    assertThat(there(robot, ".covered")).isTrue();
    step(robot, "plating-home-cautions");
    cautions(robot, "plating-home-cautions");
    fire(robot, "#finish-step");
    Waiting.until(() -> there(robot, "#caution-nickel-again-read"));
    assertThat(there(robot, "#step-calculator")).isFalse();
    cautions(robot, "plating-home-nickel");
    Waiting.until(() -> there(robot, "#step-calculator"));
    type(robot, "thickness", "5");
    type(robot, "density", "2");
    type(robot, "efficiency", "100");
    // 5 µm of nickel on a 12.7 mm ball at 2 A/dm²: 101.3 mA and 12.20 min (recomputed, Faraday)
    assertThat(said(robot, "current")).isEqualTo("101 mA");
    assertThat(said(robot, "time-needed")).isEqualTo("12.2 min");
    picture(robot, "plating-calculator");
    type(robot, "room", "0.0001");
    assertThat(there(robot, "#plating-current")).isFalse();
    type(robot, "room", "0.1");
    assertThat(said(robot, "hydrogen")).contains("0.1 m³");
    fire(robot, "#plating-why-charge");
    Waiting.until(() -> there(robot, "#note"));
    assertThat(robot.lookup("#note").query().getAccessibleText()).contains("Faraday");
  }

  private static void type(FxRobot robot, String field, String text) {
    robot.interact(
        () -> {
          TextField box = robot.lookup("#plating-" + field).queryAs(TextField.class);
          box.setText(text);
          box.getOnAction().handle(new javafx.event.ActionEvent());
        });
  }

  private static String said(FxRobot robot, String outcome) {
    return robot
        .lookup("#plating-" + outcome)
        .queryAs(Label.class)
        .getText()
        .replace('\u00a0', ' ');
  }

  private void picture(FxRobot robot, String name) {
    robot.interact(
        () -> Pictures.keep(stage.getScene(), Path.of("target/pictures/" + name + ".png")));
  }
}
