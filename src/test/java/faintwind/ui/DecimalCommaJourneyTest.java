package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.record.Event;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Somebody whose numbers have commas: in every field, and in the tables of the turntable. */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class DecimalCommaJourneyTest {
  private static final Path DEMO = Path.of("demo-projects/cellar/runs/first-session");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path elsewhere;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    journey = Journey.of(hands, folder).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  /** The demonstration's runs as a spreadsheet of that country writes them. */
  private void writeRuns() throws IOException {
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
        List<String> lines =
            Files.readAllLines(file).stream()
                .map(line -> line.startsWith("#") ? line : line.replace(',', ';'))
                .map(
                    line -> line.startsWith("#") ? line : line.replaceAll("(\\d)\\.(\\d)", "$1,$2"))
                .toList();
        Files.write(elsewhere.resolve(file.getFileName()), lines);
      }
    }
  }

  @Test
  void designReadingsAndRunsAreUnderstoodWithCommas() throws IOException {
    writeRuns();
    Cellar.begin("Attic")
        .design()
        .before("weigh-blanks")
        .open("weigh-blanks")
        .into(folder, "attic");
    journey.open();
    journey.fire("#open-first");
    Waiting.until(() -> journey.there("#reading-blank-a"));
    journey.type("blank-a", "9,61");
    Waiting.until(
        () ->
            journey
                .state("attic")
                .last(Event.ReadingEntered.class)
                .filter(line -> line.event().amount().value() == 9.61)
                .isPresent());
    journey.fire("#place-design");
    Waiting.until(() -> journey.there("#design-diameter"));
    journey.write("#design-diameter", "12,5");
    Waiting.until(() -> journey.there("#design-keep"));
    journey.fire("#design-keep");
    Waiting.until(
        () ->
            journey.state("attic").designJson().filter(json -> json.contains("12.5")).isPresent());
    journey.fire("#place-turntable");
    journey.fire("#caution-spinning-arm-read");
    journey.choose(elsewhere.resolve("runs.csv"));
    journey.fire("#turntable-way-file");
    journey.fire("#turntable-drop-choose");
    Waiting.until(() -> journey.there("#recording-1"));
    assertThat(journey.words("#turntable-title")).startsWith("9 runs, 7 of them turned");
  }
}
