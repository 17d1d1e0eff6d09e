package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

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
    whatIsDoneStandsInOneLine(robot, journey);
    journey.pictures("board");
    journey.fire("#home-compare");
    Waiting.until(() -> journey.there("#compare-curves"));
    assertThat(journey.there("#compare-logs")).isTrue();
    namesStandInOneLineWhereThereIsRoom(robot, journey);
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

  /** Where it is narrow what has no room goes to a line of its own. */
  private static void whatIsDoneStandsInOneLine(FxRobot robot, Journey journey) {
    double wide = journey.stage().getWidth();
    robot.interact(() -> journey.stage().setWidth(1024));
    WaitForAsyncUtils.waitForFxEvents();
    for (String id : List.of("order", "compare", "archive")) {
      Labeled one = robot.lookup("#home-" + id).queryAs(Labeled.class);
      assertThat(one.getWidth()).as(id).isGreaterThan(one.prefWidth(-1) - 1);
    }
    robot.interact(() -> journey.stage().setWidth(wide));
  }

  private static void namesStandInOneLineWhereThereIsRoom(FxRobot robot, Journey journey) {
    double wide = journey.stage().getWidth();
    robot.interact(() -> journey.stage().setWidth(1920));
    WaitForAsyncUtils.waitForFxEvents();
    Set<Labeled> names = robot.from(robot.lookup("#compare-designs")).lookup(".label").queryAll();
    assertThat(names)
        .isNotEmpty()
        .allSatisfy(
            name ->
                assertThat(name.getHeight())
                    .as(name.getText())
                    .isLessThan(name.prefHeight(-1) + 2));
    robot.interact(() -> journey.stage().setWidth(wide));
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
