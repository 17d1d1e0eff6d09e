package faintwind.ui.frame;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.ui.FaintwindApp;
import faintwind.ui.FaintwindWindow;
import faintwind.ui.Pictures;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class FrameTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  static Path folder;

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
  void helpForTheScreenOpensInTheMarginWithItsWordsAndEscapeClosesIt(FxRobot robot) {
    robot.press(KeyCode.F1).release(KeyCode.F1);
    assertThat(robot.lookup("#note").tryQuery()).isPresent();
    VBox terms = robot.lookup("#help-words").queryAs(VBox.class);
    robot.interact(() -> robot.lookup("#help-find").queryAs(TextField.class).setText("zincate"));
    assertThat(terms.getChildren()).hasSizeBetween(1, 3);
    robot.interact(() -> Pictures.keep(stage.getScene(), Path.of("target/pictures/frame.png")));
    robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
    assertThat(robot.lookup("#note").tryQuery()).isEmpty();
  }
}
