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
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Single steps at work in the window: a recording as a reading, a clock that may have leapt. */
@ExtendWith(ApplicationExtension.class)
class StepWorkTest {
  private final ChosenFiles files = new ChosenFiles();
  private final MovedClock clock = new MovedClock(Cellar.NOW.toInstant());

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // the test opens its window
  private Stage stage;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private FxRobot robot;

  @BeforeEach
  void asked() throws IOException {
    new WindowChoices(100, "light", false, "Ida").write(folder);
  }

  @AfterEach
  void close() {
    robot.interact(() -> stage.close());
  }

  @Test
  void aRecordingGivesTheReadingAndWhatItShowsStaysInTheLog(FxRobot hands) throws IOException {
    robot = hands;
    Cellar.begin("Rind 9").design().before("zero-check").open("zero-check").into(folder, "r");
    openWindow();
    files.choose(Files.writeString(folder.resolve("notes.csv"), "day,weather\n1,rain\n"));
    fire("#bench-drop-choose");
    Waiting.until(() -> words("#bench-lines").contains("time_s"));
    assertThat(state().standing(Event.ReadingEntered.class, "zero-check")).isEmpty();
    files.choose(recording());
    fire("#bench-drop-choose");
    Waiting.until(() -> words("#bench-lines").contains("Mains of 50 Hz"));
    Waiting.until(() -> state().reading("zero-check", "zero-signal").isPresent());
    double zero =
        state().reading("zero-check", "zero-signal").orElseThrow().event().amount().value();
    assertThat(zero).isBetween(0.0035, 0.0045);
    Waiting.until(() -> !state().standing(Event.NoteWritten.class, "zero-check").isEmpty());
    assertThat(state().standing(Event.NoteWritten.class, "zero-check").get(0).event().text())
        .contains("bench.csv")
        .contains("Mains of 50 Hz");
    Waiting.until(() -> there("#finish-step"));
  }

  /** 4 µV of offset and 3 µV of mains, folded to 1 Hz by 7 rows a second. */
  private Path recording() throws IOException {
    StringBuilder text = new StringBuilder("time_s,signal_mV\n");
    for (int i = 0; i < 2100; i++) {
      double t = i / 7.0;
      double ripple = ((i * 7919) % 13 - 6) * 1e-4;
      double value = 0.004 + 0.003 * Math.sin(2 * Math.PI * 50 * t) + ripple;
      text.append(String.format(Locale.ROOT, "%.4f,%.6f%n", t, value));
    }
    return Files.writeString(folder.resolve("bench.csv"), text);
  }

  @Test
  void aClockThatEndedInALongSilenceAsksForTheDateBeforeItIsDone(FxRobot hands) throws IOException {
    robot = hands;
    Cellar.begin("Rind 9")
        .design()
        .before("coat-parts")
        .open("coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 24 * 3600, 21 * 60)
        .into(folder, "r");
    clock.move(Duration.ofDays(365));
    openWindow();
    Waiting.until(() -> there("#confirm-time"));
    assertThat(there("#finish-step")).isFalse();
    assertThat(words("#step-clock")).contains("once somebody says that the date is right");
    fire("#confirm-time");
    Waiting.until(() -> there("#finish-step"));
    assertThat(state().standing(Event.ClockConfirmed.class, "coat-parts"))
        .hasSize(1)
        .allMatch(line -> line.who().equals("Ida"));
  }

  @Test
  void aClockSetBackIsSaidAndNeverDone(FxRobot hands) throws IOException {
    robot = hands;
    Cellar.begin("Rind 9")
        .design()
        .before("coat-parts")
        .open("coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 24 * 3600, 21)
        .into(folder, "r");
    clock.move(Duration.ofHours(-1));
    openWindow();
    Waiting.until(() -> there("#start-clock"));
    assertThat(there("#finish-step")).isFalse();
    assertThat(words("#step-clock")).doesNotContain("-").doesNotContain("\u2212");
  }

  private void openWindow() {
    robot.interact(
        () -> {
          FaintwindApp.dressProgram();
          stage = new Stage();
          new FaintwindWindow(stage, Messages.of(Locale.ENGLISH), KeptLook.in(folder), clock, files)
              .show();
        });
    Waiting.until(() -> there("#instrument-r"));
    robot.doubleClickOn("#instrument-r");
    Waiting.until(() -> there("#step-title"));
  }

  private InstrumentState state() {
    try {
      return new InstrumentFolder(folder.resolve("r")).open().state();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String words(String id) {
    Optional<Node> part = robot.lookup(id).tryQuery();
    return part.map(
            node ->
                robot.from(node).lookup(".label").queryAllAs(Label.class).stream()
                    .map(Label::getText)
                    .collect(Collectors.joining(" ")))
        .orElse("");
  }

  private void fire(String id) {
    Presses.fire(robot, id);
  }

  private boolean there(String id) {
    return Presses.there(robot, id);
  }
}
