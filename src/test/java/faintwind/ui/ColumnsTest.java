package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** What stands in rows below one another stands in columns, however long its words are. */
@ExtendWith(ApplicationExtension.class)
class ColumnsTest {
  private static final String STEP = "cable-check";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void longNamesAndLongReadingsStayInTheirColumns(FxRobot robot) throws IOException {
    Cellar.begin("Between the second ripening room and the stairs to the brine bath, by the door")
        .design()
        .before(STEP)
        .open(STEP)
        .cautions(STEP)
        .into(folder, "long");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    Waiting.until(() -> journey.there("#instrument-long"));
    Waiting.until(() -> !journey.words("#instrument-long .home-path").isEmpty());
    assertThatItStaysLeftOf(robot, "#instrument-long .home-name .label", ".home-path");
    journey.openInstrument("long");
    journey.step(STEP);
    Waiting.until(() -> robot.lookup(".reading-row").queryAll().size() > 5);
    assertThat(lefts(robot, ".reading-expected")).as("columns of bands").hasSize(1);
    assertThat(lefts(robot, ".reading-field")).as("columns of boxes").hasSize(1);
    assertThat(lefts(robot, ".head-typed")).isEqualTo(lefts(robot, ".reading-field"));
    assertThatItStaysLeftOf(robot, ".reading-what .label", ".reading-expected");
    journey.close();
  }

  private static void assertThatItStaysLeftOf(FxRobot robot, String words, String next) {
    double begin = box(robot.lookup(next).query()).getMinX();
    for (Node label : robot.lookup(words).<Node>queryAll()) {
      assertThat(box(label).getMaxX()).as(label.toString()).isLessThanOrEqualTo(begin);
    }
  }

  private static Set<Long> lefts(FxRobot robot, String nodes) {
    Set<Long> lefts = new TreeSet<>();
    robot.lookup(nodes).queryAll().forEach(node -> lefts.add(Math.round(box(node).getMinX())));
    return lefts;
  }

  private static Bounds box(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }
}
