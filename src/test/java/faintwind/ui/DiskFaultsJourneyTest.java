package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * The window on a disk that is full, a folder that is gone, and a folder that another one holds.
 */
@ExtendWith(ApplicationExtension.class)
class DiskFaultsJourneyTest {
  private static final String STEP = "heater-insulation";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path temp;

  /** An instrument whose insulation is measured next. */
  private static void build(Path workspace) throws IOException {
    Cellar.begin("Rind 2")
        .design()
        .before(STEP)
        .open(STEP)
        .cautions(STEP)
        .into(workspace, "rind-2");
  }

  private static Journey opened(FxRobot robot, Path workspace) throws IOException {
    Journey journey = Journey.of(robot, workspace).asked();
    journey.open(1024, 700);
    journey.openInstrument("rind-2");
    journey.step(STEP);
    Waiting.until(() -> journey.there("#reading-lead-a-ball"));
    return journey;
  }

  @Test
  void onAFullDiskWhatWasTypedIsKeptInAnotherPlace(FxRobot robot) throws Exception {
    Path disk = Files.createDirectory(temp.resolve("stick"));
    assumeTrue(
        succeeds("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", disk.toString()),
        "no small disk can be mounted here");
    try {
      build(disk);
      Journey journey = opened(robot, disk);
      fill(disk);
      journey.type("lead-a-ball", "OL 20M");
      assertThatItGoesElsewhere(journey, "space");
      journey.close();
    } finally {
      assertThat(succeeds("umount", disk.toString())).isTrue();
    }
  }

  @Test
  void whereTheFolderIsGoneWhatWasTypedIsKeptInAnotherPlace(FxRobot robot) throws Exception {
    Path workspace = Files.createDirectory(temp.resolve("workspace"));
    build(workspace);
    Journey journey = opened(robot, workspace);
    delete(workspace.resolve("rind-2"));
    journey.type("lead-a-ball", "OL 20M");
    assertThatItGoesElsewhere(journey, "");
    journey.close();
  }

  private void assertThatItGoesElsewhere(Journey journey, String why) throws IOException {
    Waiting.until(() -> journey.there("#keep-elsewhere"));
    assertThat(journey.words("#next-line")).contains("in memory", why);
    journey.pictures("elsewhere" + why);
    Path place = temp.resolve("saved here");
    journey.choose(place);
    journey.fire("#keep-elsewhere");
    Waiting.until(() -> typed(place).contains("OL 20M"));
    Waiting.until(() -> !journey.there("#keep-elsewhere"));
    // the photo that the made-up build names was never there
    assertThat(new InstrumentFolder(place).audit().problems())
        .allMatch(problem -> problem.found().equals("photos/x.jpg"));
    // and the window goes on there
    journey.type("lead-b-ball", "OL 20M");
    Waiting.until(() -> typed(place).size() > 1);
    assertThat(journey.window().screen()).isPresent();
  }

  private static List<String> typed(Path place) {
    try {
      InstrumentState state = new InstrumentFolder(place).open().state();
      return state.standing(ReadingEntered.class, STEP).stream()
          .map(Standing::event)
          .map(ReadingEntered::typed)
          .toList();
    } catch (IOException notYet) {
      return List.of();
    }
  }

  @Test
  void aSecondWindowReadsAndSaysWhoWrites(FxRobot robot) throws Exception {
    Path workspace = Files.createDirectory(temp.resolve("workspace"));
    build(workspace);
    Journey first = opened(robot, workspace);
    Journey second = Journey.of(robot, workspace);
    second.open(1024, 700);
    robot.interact(() -> second.stage().toFront());
    Waiting.until(() -> !second.wordsHere("#instrument-rind-2").isEmpty());
    robot.interact(
        () ->
            robot
                .from(second.stage().getScene().getRoot())
                .lookup("#instrument-rind-2")
                .query()
                .fireEvent(Presses.click()));
    Waiting.until(
        () -> second.wordsHere("#next-line").contains("Somebody else has this instrument open"));
    assertThat(second.wordsHere("#next-line")).contains("Ida", "can be read here");
    second.pictures("second-window");
    second.close();
    first.close();
  }

  private static void fill(Path disk) {
    try {
      Files.write(disk.resolve("filler"), new byte[4 << 20]);
    } catch (IOException full) {
      assertThat(full).hasMessageContaining("space");
    }
  }

  private static void delete(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path done, IOException failed)
              throws IOException {
            Files.delete(done);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private static boolean succeeds(String... command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).inheritIO().start();
    return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
  }
}
