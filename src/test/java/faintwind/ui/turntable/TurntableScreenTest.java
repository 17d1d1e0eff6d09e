package faintwind.ui.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event;
import faintwind.ui.ScreenStage;
import faintwind.ui.frame.Theme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class TurntableScreenTest {
  private static final Path RUNS = Path.of("src/test/resources/sample-runs/bench-f/in/runs.csv");

  private final List<Event> journal = new ArrayList<>();
  private final List<Path> taken = new ArrayList<>();

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @SuppressWarnings("NullAway.Init")
  private TurntableModel model;

  @Start
  void start(Stage stage) {
    window = new ScreenStage(stage);
    model = new TurntableModel(window.words, window.background, taken::add);
    window.show(new TurntableScreen(window.desk, model, Optional.empty(), journal::add));
  }

  @Test
  void cautionComesFirstThenTheTableIsShownAndTakenOn(FxRobot robot) throws TimeoutException {
    assertThat(robot.lookup("#turntable-drop").query().isVisible()).isTrue();
    assertThat(robot.lookup("#turntable-body").query().isVisible()).isFalse();
    robot.interact(() -> window.picture("turntable-caution"));
    robot.clickOn("#caution-spinning-arm-read");
    assertThat(journal).containsExactly(new Event.CautionAcknowledged("spinning-arm"));
    assertThat(robot.lookup("#turntable-body").query().isVisible()).isTrue();

    window.choose(RUNS);
    robot.clickOn("#turntable-drop-choose");
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> !model.view().get().runs().isEmpty());
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(robot.lookup("#recording-1").tryQuery()).isPresent();
    robot.interact(() -> window.picture("turntable-light"));
    robot.interact(() -> window.theme(Theme.DARK));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("turntable-dark"));
    robot.clickOn("#turntable-fit");
    assertThat(taken).containsExactly(RUNS);
  }
}
