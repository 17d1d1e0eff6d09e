package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Home as a bench board: search, filter, compare, archive and bring back. */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class BoardJourneyTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void tickedOnesAreComparedArchivedAndBroughtBack(FxRobot robot) throws IOException {
    Journey journey =
        Journey.of(robot, folder)
            .asked()
            .copy(Path.of("demo-projects/cellar"), "cellar")
            .copy(Path.of("demo-projects/cellar-door"), "door")
            .copy(Path.of("demo-projects/ripening-room"), "room");
    journey.open(1366, 768);
    Waiting.until(() -> journey.there("#instrument-cellar"));
    assertThat(journey.words("#instrument-cellar"))
        .contains("0.097 to 2.9 m/s, good: ± 2.3 %", "Last jar check: 31.7 K");
    tick(robot, "cellar");
    assertThat(robot.lookup("#home-compare").query().isVisible()).isFalse();
    tick(robot, "door");
    journey.pictures("board");
    journey.fire("#home-compare");
    Waiting.until(() -> journey.there("#compare-curves"));
    assertThat(journey.there("#compare-logs")).isTrue();
    journey.pictures("compared");
    journey.fire("#compare-back");
    Waiting.until(() -> journey.there("#instrument-door"));
    tick(robot, "door");
    journey.fire("#home-archive");
    Waiting.until(() -> !journey.there("#instrument-door"));
    assertThat(journey.state("door").retired()).isTrue();
    choose(robot, 4);
    Waiting.until(() -> journey.there("#instrument-door"));
    tick(robot, "door");
    journey.fire("#home-archive");
    Waiting.until(() -> !journey.there("#instrument-door"));
    choose(robot, 0);
    Waiting.until(() -> journey.there("#instrument-door"));
    assertThat(journey.state("door").retired()).isFalse();
    journey.close();
  }

  private static void tick(FxRobot robot, String instrument) {
    robot.interact(() -> robot.lookup("#tick-" + instrument).queryAs(CheckBox.class).fire());
  }

  private static void choose(FxRobot robot, int filter) {
    robot.interact(
        () ->
            robot
                .lookup("#home-filter")
                .queryAs(ComboBox.class)
                .getSelectionModel()
                .select(filter));
  }
}
