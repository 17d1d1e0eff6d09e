package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.Cellar;
import faintwind.ui.Journey;
import faintwind.ui.Waiting;
import java.io.IOException;
import java.nio.file.Path;
import javafx.scene.Node;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** What the jar checks of an instrument did over the years, beside the step that takes one. */
@ExtendWith(ApplicationExtension.class)
class JarTrendTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path parent;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    journey = Journey.of(hands, parent).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  private void open(String... deltas) throws IOException {
    Cellar cellar =
        Cellar.begin("Rind 4")
            .design()
            .before("jar-check")
            .open("jar-check")
            .cautions("jar-check")
            .clock("jar-check", 60, 30)
            .type("jar-check", "jar-air", "20");
    for (String delta : deltas) {
      cellar.type("jar-check", "jar-delta", delta);
    }
    cellar.into(parent, "rind-4");
    journey.open();
    journey.openInstrument("rind-4");
    Waiting.until(() -> journey.there("#step-title"));
    journey.go("jar-check");
    Waiting.until(() -> journey.there("#path-step-jar-check"));
  }

  @Test
  void fiveChecksMakeAChartThatSaysWhatItShows(FxRobot robot) throws IOException {
    open("29.4", "29.6", "29.3", "29.5", "27.1");
    Waiting.until(() -> journey.there("#step-trend-1"));
    Node chart = robot.lookup("#step-trend-1").query();
    assertThat(chart.getAccessibleText()).contains("Difference").contains("27.1");
  }

  @Test
  void fourChecksMakeNone() throws IOException {
    open("29.4", "29.6", "29.3", "29.5");
    assertThat(journey.there("#step-trend-1")).isFalse();
  }
}
