package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.frame.Place;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** A reading that tested something else, and one that says stop, as step and record show them. */
@ExtendWith(ApplicationExtension.class)
class VoidReadingsJourneyTest {
  private static final String STEP = "heater-insulation";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void aReadingTypedBeforeItsStepIsVoidAndAShortNeverGood(FxRobot robot) throws IOException {
    Cellar.begin("Rind 2")
        .design()
        .open(STEP)
        .cautions(STEP)
        .type(STEP, "lead-b-ball", "OL 20M")
        .before(STEP)
        .open(STEP)
        .cautions(STEP)
        .type(STEP, "lead-a-ball", "27 Ω")
        .into(folder, "rind-2");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-2");
    journey.step(STEP);
    Waiting.until(() -> journey.there("#reading-lead-a-ball"));
    assertThat(journey.words("#step-sheet")).contains("Measure again", "Stop");
    journey.pictures("void-step");
    robot.interact(() -> journey.window().desk().go().accept(Place.RECORD));
    Waiting.until(() -> journey.there("#ledger"));
    assertThat(journey.words("#record-title")).endsWith("one reading void: measure again");
    journey.pictures("void-record");
    while (journey.there("#ledger-more")) {
      journey.fire("#ledger-more");
    }
    assertThatTheShortIsBlocked(robot);
    journey.close();
  }

  /** Each line of the ledger that speaks of a lead carries the mark of what it shows. */
  private static void assertThatTheShortIsBlocked(FxRobot robot) {
    List<String> marks = new ArrayList<>();
    for (Node row : robot.lookup("#ledger .ledger-row").queryAll()) {
      String said =
          robot.from(row).lookup(".label").queryAllAs(Labeled.class).stream()
              .map(Labeled::getText)
              .collect(Collectors.joining(" "));
      Node mark = robot.from(row).lookup(".mark").query();
      if (said.contains("27\u00a0Ω")) {
        marks.add("short " + mark.getStyleClass());
      } else if (said.toLowerCase(Locale.ROOT).contains("measure again")) {
        marks.add("void " + mark.getStyleClass());
      }
    }
    assertThat(marks)
        .containsExactly(
            "short mark " + Mark.BLOCKED.styleClass(), "void mark " + Mark.ATTENTION.styleClass());
  }
}
