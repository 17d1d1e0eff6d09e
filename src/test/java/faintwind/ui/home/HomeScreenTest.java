package faintwind.ui.home;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.WindowChoices;
import faintwind.message.Messages;
import faintwind.ui.FaintwindApp;
import faintwind.ui.FaintwindWindow;
import faintwind.ui.Pictures;
import faintwind.ui.Presses;
import faintwind.ui.Waiting;
import faintwind.ui.frame.KeptLook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class HomeScreenTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private Stage stage;

  @Start
  void start(Stage stage) {
    this.stage = stage;
    FaintwindApp.dressProgram();
    new FaintwindWindow(
            stage,
            Messages.of(Locale.ENGLISH),
            KeptLook.in(folder),
            Clock.system(ZoneId.systemDefault()))
        .show();
  }

  @Test
  void firstStartAsksThenOffersTheParts(FxRobot robot) throws IOException {
    robot.interact(() -> Pictures.keep(stage.getScene(), Path.of("target/pictures/first.png")));
    robot.clickOn("#first-size-125");
    robot.press(KeyCode.CONTROL, KeyCode.ENTER).release(KeyCode.ENTER, KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    Waiting.until(() -> robot.lookup("#start-parts").tryQuery().isPresent());
    robot.interact(
        () -> Pictures.keep(stage.getScene(), Path.of("target/pictures/home-first.png")));
    assertThat(WindowChoices.read(folder).orElseThrow().textPct()).isEqualTo(125);
    assertThat(robot.lookup("#first-rehearse").queryAs(Button.class).isDisabled()).isFalse();
    Presses.seen(robot);
    robot.clickOn("#start-parts");
    robot.clickOn("#new-name").write("Rind 6");
    assertThat(robot.lookup("#begin").tryQuery()).isEmpty();
    robot.clickOn("#new-who").write("Ida");
    assertThat(robot.lookup("#begin").tryQuery()).isPresent();
    robot.interact(() -> Pictures.keep(stage.getScene(), Path.of("target/pictures/naming.png")));
  }
}
