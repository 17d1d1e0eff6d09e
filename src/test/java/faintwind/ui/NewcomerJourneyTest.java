package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.WindowChoices;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.ui.frame.KeptLook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
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
  private final ChosenFiles files = new ChosenFiles();

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // the test opens its window
  private Stage stage;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private FxRobot robot;

  @AfterEach
  void close() {
    robot.interact(() -> stage.close());
  }

  @Test
  void whatToBuyAndWhatItWillMeasureFromTheEmptyWindow(FxRobot hands) throws IOException {
    robot = hands;
    new WindowChoices(100, "light", false, "Ida").write(folder);
    openWindow();
    fire("#start-parts");
    Waiting.until(() -> there("#new-name"));
    robot.clickOn("#new-name").write("First one");
    fire("#begin");
    Waiting.until(() -> there("#suggestion-1"));
    String proposed = words("#suggestion-1");
    fire("#take-1");
    Waiting.until(() -> state().last(Event.DesignChosen.class).isPresent());
    Waiting.until(() -> there("#outcome-smallest-speed-m-s"));
    assertThat(words("#outcome-smallest-speed-m-s")).contains("m/s").contains("good");
    fire("#why-smallest-speed-m-s");
    Waiting.until(() -> there(".note"));
    assertThat(words(".note")).contains("draught of 0.010 to 0.020 m/s");
    fire("#design-parts");
    Path list = folder.resolve("parts.csv");
    files.choose(list);
    fire("#parts-csv");
    Waiting.until(() -> Files.exists(list));
    String design = state().designJson().orElseThrow();
    List<String> rows = Files.readAllLines(list);
    assertThat(rows).hasSizeGreaterThan(9);
    assertThat(rows.get(1)).startsWith("ball,").contains(" mm");
    assertThat(design).contains(proposed.substring(0, proposed.indexOf(',')));
  }

  private void openWindow() {
    robot.interact(
        () -> {
          FaintwindApp.dressProgram();
          stage = new Stage();
          new FaintwindWindow(
                  stage,
                  Messages.of(Locale.ENGLISH),
                  KeptLook.in(folder),
                  Clock.fixed(Instant.parse("2026-11-21T12:00:00Z"), ZoneOffset.UTC),
                  files)
              .show();
        });
  }

  private InstrumentState state() {
    try {
      return new InstrumentFolder(folder.resolve("first-one")).open().state();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All words within a node, in order. */
  private String words(String id) {
    Node node = robot.lookup(id).query();
    StringBuilder all = new StringBuilder();
    node.lookupAll(".label").stream()
        .map(label -> ((Labeled) label).getText())
        .forEach(text -> all.append(text).append(' '));
    return node instanceof Label label ? label.getText() : all.toString();
  }

  /** Waits for a button or link and presses it, in one go: the screens are drawn anew often. */
  private void fire(String id) {
    Presses.fire(robot, id);
  }

  private boolean there(String id) {
    return Presses.there(robot, id);
  }
}
