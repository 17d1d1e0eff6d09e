package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * The question "what do I buy, and what will it be able to measure?" from the empty window: six
 * presses and one name.
 */
@ExtendWith(ApplicationExtension.class)
class NewcomerJourneyTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private FxRobot robot;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    robot = hands;
    journey = Journey.of(hands, folder).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  @Test
  void whatToBuyAndWhatItWillMeasureFromTheEmptyWindow() throws IOException {
    journey.open();
    journey.fire("#start-parts");
    Waiting.until(() -> journey.there("#new-name"));
    robot.clickOn("#new-name").write("First one");
    journey.fire("#begin");
    Waiting.until(() -> journey.there("#suggestion-1"));
    String proposed = journey.words("#suggestion-1");
    journey.fire("#take-1");
    Waiting.until(() -> journey.state("first-one").last(Event.DesignChosen.class).isPresent());
    Waiting.until(() -> journey.there("#outcome-smallest-speed-m-s"));
    assertThat(journey.words("#outcome-smallest-speed-m-s")).contains("m/s").contains("good");
    journey.fire("#why-smallest-speed-m-s");
    Waiting.until(() -> journey.there(".note"));
    assertThat(journey.words(".note")).contains("draught of 0.010 to 0.020 m/s");
    journey.fire("#design-parts");
    Path list = folder.resolve("parts.csv");
    journey.choose(list);
    journey.fire("#parts-csv");
    Waiting.until(() -> Files.exists(list));
    String design = journey.state("first-one").designJson().orElseThrow();
    List<String> rows = Files.readAllLines(list);
    assertThat(rows).hasSizeGreaterThan(9);
    assertThat(rows.get(1)).startsWith("ball,").contains(" mm");
    assertThat(design).contains(proposed.substring(0, proposed.indexOf(',')));
  }

  /** The demonstration is marked, lies in a folder of its own, and is left in one step. */
  @Tag("long")
  @Test
  void theDemonstrationOpensOnADayOfAirAndIsLeftInOneStep() {
    journey.open();
    journey.fire("#first-demo");
    Waiting.until(() -> journey.there("#leave-demo"));
    Waiting.until(() -> journey.there("#field-stretch"));
    assertThat(folder.resolve("Demo (made up)/cellar/journal.jsonl")).exists();
    journey.fire("#leave-demo");
    Waiting.until(() -> journey.there("#start-parts"));
    assertThat(journey.there("#leave-demo")).isFalse();
  }
}
