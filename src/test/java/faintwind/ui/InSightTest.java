package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.frame.Focus;
import java.io.IOException;
import java.nio.file.Path;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** What somebody needs at once is on the screen, and not below its edge or behind a menu. */
@ExtendWith(ApplicationExtension.class)
class InSightTest {
  private static final String STEP = "heater-insulation";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void aStepThatWasStoppedOpensAtItsReadings(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2")
        .design()
        .before(STEP)
        .open(STEP)
        .cautions(STEP)
        .type(STEP, "lead-a-ball", "27 Ω")
        .type(STEP, "lead-b-ball", "127,4 Ω")
        .type(STEP, "lead-to-lead", "100,3")
        .into(folder, "rind-2");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-2");
    Waiting.until(() -> journey.there("#step-trouble"));
    Waiting.until(() -> isAbove(robot, "#reading-lead-a-ball", "#next-line"));
    journey.picture("step-stopped");
    assertThat(isAbove(robot, "#step-trouble .mark", "#next-line")).isTrue();
    journey.close();
  }

  /**
   * Folded, the sheet is another one: the reading in focus is whole, and what follows it begins.
   */
  @Test
  void theReadingInFocusIsWholeAfterTheWindowHasFolded(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2")
        .design()
        .before(STEP)
        .open(STEP)
        .cautions(STEP)
        .type(STEP, "lead-a-ball", "6M")
        .into(folder, "rind-2");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-2");
    Waiting.until(() -> robot.lookup("#reading-lead-b-ball").tryQuery().isPresent());
    robot.interact(() -> robot.lookup("#reading-lead-b-ball").query().requestFocus());
    robot.interact(
        () -> {
          journey.stage().setWidth(1024);
          journey.stage().setHeight(700);
          journey.window().desk().look().textPct().set(150);
        });
    Waiting.until(() -> robot.lookup("#path-pane").tryQuery().isEmpty());
    Waiting.until(() -> isWhole(robot, "#reading-lead-b-ball"));
    journey.picture("step-folded");
    assertThat(isAbove(robot, "#reading-lead-b-ball", "#next-line")).isTrue();
    robot.interact(() -> journey.window().desk().look().textPct().set(100));
    Waiting.until(() -> robot.lookup("#path-pane").tryQuery().isPresent());
    robot.interact(() -> journey.stage().setWidth(1280));
    Waiting.until(() -> robot.lookup("#margin-pane").tryQuery().isPresent());
    journey.close();
  }

  /** Its row lies within the sheet, with a line's room below it. */
  private static boolean isWhole(FxRobot robot, String reading) {
    Bounds row = box(Focus.rowOf(robot.lookup(reading).query()).orElseThrow());
    Bounds sheet = box(robot.lookup("#sheet-pane").query());
    return row.getMinY() >= sheet.getMinY() && row.getMaxY() + 30 <= sheet.getMaxY();
  }

  /** Whoever needs large text finds the way to smaller and larger where it was. */
  @Test
  void lookTextSizeAndHelpStayInTheStripBesideTheMenuOfPlaces(FxRobot robot) throws IOException {
    Cellar.begin("Rind 6, over the floor drain").design().into(folder, "rind-6");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-6");
    robot.interact(() -> journey.window().desk().look().textPct().set(150));
    Waiting.until(() -> robot.lookup("#places-folded").query().isVisible());
    Waiting.until(() -> robot.lookup("#help").query().getParent().isVisible());
    assertThat(box(robot.lookup("#help").query()).getMaxX()).isLessThanOrEqualTo(1280);
    robot.interact(() -> journey.stage().setWidth(960));
    Waiting.until(() -> !robot.lookup("#help").query().getParent().isVisible());
    journey.close();
  }

  private static boolean isAbove(FxRobot robot, String upper, String lower) {
    return box(robot.lookup(upper).query()).getMinY() > 0
        && box(robot.lookup(upper).query()).getMaxY() < box(robot.lookup(lower).query()).getMinY();
  }

  private static Bounds box(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }
}
