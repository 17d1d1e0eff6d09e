package faintwind.ui.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event;
import faintwind.ui.ScreenStage;
import faintwind.ui.frame.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
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

  @Test
  void theOpenWayIsMarkedAndRunsThatCountStayListedBesideARefusedTable(
      FxRobot robot, @TempDir Path folder) throws IOException, TimeoutException {
    robot.clickOn("#caution-spinning-arm-read");
    assertThat(open(robot)).containsExactly("turntable-way-file");
    robot.clickOn("#turntable-way-typed");
    assertThat(open(robot)).containsExactly("turntable-way-typed");
    robot.interact(() -> model.open(RUNS));
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> !model.view().get().runs().isEmpty());
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(open(robot)).isEmpty();
    List<TurntableModel.RunLine> runs = model.lines();
    assertThat(model.whose()).isEmpty();

    Path bad = Files.writeString(folder.resolve("runs.csv"), "run,kind\n1,spin\n");
    robot.interact(() -> model.open(bad));
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> model.view().get().refused());
    assertThat(model.lines()).isEqualTo(runs).isNotEmpty();
    assertThat(model.whose()).hasValueSatisfying(text -> assertThat(text).contains("still count"));
  }

  /** Ids of the ways that are marked as open. */
  private static List<String> open(FxRobot robot) {
    return robot.lookup(".way").queryAll().stream()
        .filter(
            way ->
                way.getPseudoClassStates().stream()
                    .anyMatch(state -> state.getPseudoClassName().equals("here")))
        .map(Node::getId)
        .toList();
  }
}
