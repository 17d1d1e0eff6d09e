package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.ui.FaintwindApp;
import faintwind.ui.FaintwindWindow;
import faintwind.ui.Pictures;
import faintwind.ui.Presses;
import faintwind.ui.Waiting;
import faintwind.ui.frame.KeptLook;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class StepScreenTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private Stage stage;

  @SuppressWarnings("NullAway.Init")
  private FaintwindWindow window;

  @Start
  void start(Stage stage) {
    this.stage = stage;
    FaintwindApp.dressProgram();
    window =
        new FaintwindWindow(
            stage,
            Messages.of(Locale.ENGLISH),
            KeptLook.in(folder),
            Clock.system(ZoneId.systemDefault()));
    window.show();
  }

  private void picture(FxRobot robot, String name) {
    robot.interact(
        () -> Pictures.keep(stage.getScene(), Path.of("target/pictures/" + name + ".png")));
  }

  @Test
  void walk(FxRobot robot) {
    Presses.seen(robot);
    robot.clickOn("#first-keep");
    Waiting.until(() -> robot.lookup("#start-parts").tryQuery().isPresent());
    Presses.seen(robot);
    robot.clickOn("#start-parts");
    robot.clickOn("#new-name").write("Rind 6");
    robot.clickOn("#new-who").write("Ida");
    Presses.seen(robot);
    robot.clickOn("#begin");
    Waiting.until(() -> robot.lookup("#design-title").tryQuery().isPresent());
    robot.clickOn("#place-make");
    Waiting.until(() -> robot.lookup("#step-title").tryQuery().isPresent());
    picture(robot, "step-1");
    for (String id :
        new String[] {
          "weigh-blanks",
          "drill-heated",
          "plating-needed",
          "plating-home-cautions",
          "heater-insulation"
        }) {
      robot.interact(() -> ((StepScreen) window.screen().orElseThrow()).openStep(id));
      Waiting.until(() -> true);
      picture(robot, "step-" + id);
    }
    assertThat(robot.lookup("#step-title").tryQuery()).isPresent();
    stageAndNumberAreSaidOnce(robot);
  }

  private void stageAndNumberAreSaidOnce(FxRobot robot) {
    assertThat(robot.lookup("#path-line").tryQuery()).isEmpty();
    assertThat(robot.lookup("#step-crumb").query().isVisible()).isTrue();
    robot.type(KeyCode.F11);
    Waiting.until(() -> robot.lookup("#path-line").tryQuery().isPresent());
    assertThat(robot.lookup("#step-crumb").query().isVisible()).isFalse();
    robot.type(KeyCode.F11);
    Waiting.until(() -> robot.lookup("#path-line").tryQuery().isEmpty());
    assertThat(robot.lookup("#step-crumb").query().isVisible()).isTrue();
  }
}
