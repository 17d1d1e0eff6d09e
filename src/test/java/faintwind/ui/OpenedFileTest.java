package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** A calibration file that was opened from the desktop. */
@ExtendWith(ApplicationExtension.class)
class OpenedFileTest {
  @TempDir
  @SuppressWarnings("NullAway.Init")
  Path folder;

  @Test
  void calibrationOpensWhereLogsAreConverted(FxRobot hands) throws IOException {
    Path file = folder.resolve("somebody's.calibration.json");
    try (Stream<Path> kept = Files.list(Path.of("demo-projects/cellar/calibrations"))) {
      Files.copy(kept.filter(f -> f.toString().endsWith(".json")).findFirst().orElseThrow(), file);
    }
    Journey journey = Journey.of(hands, Files.createDirectories(folder.resolve("own"))).asked();
    journey.open();
    hands.interact(() -> journey.window().showField(file));
    Waiting.until(
        () ->
            hands.lookup(".label").queryAllAs(Label.class).stream()
                .anyMatch(label -> label.getText().startsWith("Formula of 13 September 2026")));
    assertThat(hands.lookup("Bring in a field log.").tryQuery()).isPresent();
    journey.close();
  }
}
