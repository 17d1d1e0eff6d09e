package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Five hundred whole instruments in the real window, each with plan, calibration and log. */
@Tag("slow")
@ExtendWith(ApplicationExtension.class)
class ManyInstrumentsTest {
  private static final Path WHOLE = Path.of("demo-projects/cellar");
  private static final int MANY = 500;
  private static final int MOST_NODES = 20;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void fiveHundredAreListedInAMomentAndAHalf(FxRobot robot) throws IOException {
    for (int i = 0; i < MANY; i++) {
      linked(folder.resolve("rind-" + i));
    }
    for (int i = 0; i < 3; i++) {
      Journey journey = Journey.of(robot, folder).asked();
      long begin = System.nanoTime();
      journey.open(1280, 800);
      Waiting.until(
          () -> journey.there("#home-find") && robot.lookup(".home-row").queryAll().size() > 2);
      double listed_s = (System.nanoTime() - begin) / 1e9;
      Waiting.until(() -> journey.there("#open-first"));
      double known_s = (System.nanoTime() - begin) / 1e9;
      System.out.printf("%d listed after %.2f s, known after %.2f s%n", MANY, listed_s, known_s);
      assertThat(journey.words("#home-title")).contains(String.valueOf(MANY));
      robot.interact(
          () -> robot.lookup("#home-find").queryAs(TextField.class).setText("rind 1, NORTH"));
      ListView<?> list = robot.lookup("#home-rows").queryListView();
      assertThat(list.getItems()).hasSize(MANY);
      assertThat(robot.lookup(".home-row").queryAll()).hasSizeLessThan(MOST_NODES);
      journey.pictures("home-many");
      journey.close();
      assertThat(listed_s).as("window %d", i).isLessThan(i == 0 ? 3 : 1.5);
    }
  }

  private static void linked(Path target) throws IOException {
    try (Stream<Path> all = Files.walk(WHOLE)) {
      for (Path file : all.sorted().toList()) {
        Path copy = target.resolve(WHOLE.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.createLink(copy, file.toAbsolutePath());
        }
      }
    }
  }
}
