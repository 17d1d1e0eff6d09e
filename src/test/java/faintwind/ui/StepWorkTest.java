package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
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
  private final MovedClock clock = new MovedClock(Cellar.NOW.toInstant());

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    journey = new Journey(hands, folder, clock).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  @Test
  void aRecordingGivesTheReadingAndWhatItShowsStaysInTheLog() throws IOException {
    Cellar.begin("Rind 9").design().before("zero-check").open("zero-check").into(folder, "r");
    open();
    journey.choose(Files.writeString(folder.resolve("notes.csv"), "day,weather\n1,rain\n"));
    journey.fire("#bench-drop-choose");
    Waiting.until(() -> journey.words("#bench-lines").contains("time_s"));
    assertThat(journey.state("r").standing(Event.ReadingEntered.class, "zero-check")).isEmpty();
    journey.choose(recording());
    journey.fire("#bench-drop-choose");
    Waiting.until(() -> journey.words("#bench-lines").contains("Mains of 50 Hz"));
    Waiting.until(() -> journey.state("r").reading("zero-check", "zero-signal").isPresent());
    double zero =
        journey
            .state("r")
            .reading("zero-check", "zero-signal")
            .orElseThrow()
            .event()
            .amount()
            .value();
    assertThat(zero).isBetween(0.0035, 0.0045);
    Waiting.until(
        () -> !journey.state("r").standing(Event.NoteWritten.class, "zero-check").isEmpty());
    assertThat(
            journey
                .state("r")
                .standing(Event.NoteWritten.class, "zero-check")
                .get(0)
                .event()
                .text())
        .contains("bench.csv")
        .contains("Mains of 50 Hz");
    Waiting.until(() -> journey.there("#finish-step"));
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
  void aClockThatEndedInALongSilenceAsksForTheDateBeforeItIsDone() throws IOException {
    Cellar.begin("Rind 9")
        .design()
        .before("coat-parts")
        .open("coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 24 * 3600, 21 * 60)
        .into(folder, "r");
    clock.move(Duration.ofDays(365));
    open();
    Waiting.until(() -> journey.there("#confirm-time"));
    assertThat(journey.there("#finish-step")).isFalse();
    assertThat(journey.words("#step-clock")).contains("once somebody confirms the date");
    journey.fire("#confirm-time");
    Waiting.until(() -> journey.there("#finish-step"));
    assertThat(journey.state("r").standing(Event.ClockConfirmed.class, "coat-parts"))
        .hasSize(1)
        .allMatch(line -> line.who().equals("Ida"));
  }

  @Test
  void aClockSetBackIsSaidAndNeverDone() throws IOException {
    Cellar.begin("Rind 9")
        .design()
        .before("coat-parts")
        .open("coat-parts")
        .cautions("coat-parts")
        .clock("coat-parts", 24 * 3600, 21)
        .into(folder, "r");
    clock.move(Duration.ofHours(-1));
    open();
    Waiting.until(() -> journey.there("#start-clock"));
    assertThat(journey.there("#finish-step")).isFalse();
    assertThat(journey.words("#step-clock")).doesNotContain("-").doesNotContain("\u2212");
  }

  private void open() {
    journey.open();
    journey.openInstrument("r");
  }
}
