package faintwind.ui.home;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.Cellar;
import faintwind.ui.Presses;
import faintwind.ui.ScreenStage;
import faintwind.ui.Waiting;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.instrument.Workspace;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Eighty instruments in the list, with the keyboard alone. */
@ExtendWith(ApplicationExtension.class)
class HomeListTest {
  private static final int MANY = 80;
  private static final int STEP = 4;
  private static final int MOST_NODES = 20;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  static Path folder;

  private final List<Standpoint> opened = new ArrayList<>();

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private HomeModel model;

  @SuppressWarnings("NullAway.Init")
  private HomeList list;

  @Start
  void start(Stage stage) throws IOException {
    begin();
    ScreenStage shown = new ScreenStage(stage);
    Workspace workspace = new Workspace(folder, shown.desk.clock(), Locale.ENGLISH);
    model =
        new HomeModel(shown.desk, workspace, new SimpleStringProperty("Ida"), s -> opened.add(s));
    HomeScreen screen = new HomeScreen(shown.desk, model, other -> {});
    shown.show(screen);
    list = (HomeList) screen.sheet().lookup("#home-rows");
  }

  private static void begin() throws IOException {
    if (Files.exists(folder.resolve("rind-000"))) {
      return;
    }
    Path first = Cellar.begin("Rind").into(folder, "rind-000");
    for (int i = 1; i < MANY; i++) {
      Path copy = Files.createDirectory(folder.resolve(String.format("rind-%03d", i)));
      Files.copy(first.resolve("journal.jsonl"), copy.resolve("journal.jsonl"));
    }
  }

  @Test
  void onlyWhatIsInSightHasNodesAndKeysDoAll(FxRobot robot) {
    Waiting.until(() -> Presses.there(robot, "#open-first"));
    robot.interact(list::requestFocus);
    assertThat(list.getItems()).hasSize(MANY);
    assertThat(robot.lookup(".home-row").queryAll()).hasSizeBetween(3, MOST_NODES);
    assertThat(selected()).as("who needs somebody first").isEqualTo("rind-000");
    assertThat(model.next().get().sentence()).startsWith("Rind: ");

    robot.push(KeyCode.END);
    Waiting.until(() -> seen(robot, "#instrument-rind-079"));
    robot.push(KeyCode.UP);
    robot.push(KeyCode.SPACE);
    assertThat(model.picked().isPicked(folder.resolve("rind-078"))).isTrue();
    assertThat(robot.lookup("#home-compare").query().isVisible()).isFalse();
    robot.push(KeyCode.DOWN);
    robot.push(KeyCode.SPACE);
    assertThat(robot.lookup("#home-compare").query().isVisible()).isTrue();
    robot.push(KeyCode.SPACE);
    assertThat(model.picked().size()).isEqualTo(1);

    robot.push(KeyCode.ENTER);
    assertThat(opened).hasSize(1);
    model.next().get().act().orElseThrow().run().run();
    assertThat(opened)
        .extracting(s -> s.view().path().getFileName().toString())
        .as("the selected row is the one that the button opens")
        .containsExactly("rind-079", "rind-079");
  }

  @Test
  void whatIsFoundIsSelectedAndTheOneThatWasComesBack(FxRobot robot) {
    Waiting.until(() -> Presses.there(robot, "#open-first"));
    robot.interact(list::requestFocus);
    robot.push(KeyCode.DOWN);
    robot.push(KeyCode.DOWN);
    assertThat(selected()).isEqualTo("rind-002");
    robot.interact(() -> model.find("nobody is called so"));
    assertThat(list.getItems()).isEmpty();
    assertThat(model.next().get().act()).isEmpty();
    robot.interact(() -> model.find(" RIND "));
    assertThat(list.getItems()).hasSize(MANY);
    assertThat(selected()).isEqualTo("rind-002");
    robot.interact(model::toggleOrder);
    assertThat(selected()).isEqualTo("rind-002");
  }

  @Test
  void scrollingTheWholeListKeepsTheNodesItHas(FxRobot robot) {
    Waiting.until(() -> Presses.there(robot, "#open-first"));
    AtomicLong used_ns = new AtomicLong();
    var threads = ManagementFactory.getThreadMXBean();
    robot.interact(() -> used_ns.set(-threads.getCurrentThreadCpuTime()));
    for (int i = 0; i < MANY; i += STEP) {
      int row = i;
      robot.interact(
          () -> {
            list.scrollTo(row);
            list.layout();
          });
    }
    robot.interact(() -> used_ns.addAndGet(threads.getCurrentThreadCpuTime()));
    System.out.printf(
        "%d rows scrolled in %.1f ms of the window's thread%n",
        STEP, used_ns.get() / 1e6 / (MANY / STEP));
    assertThat(list.rows().size()).isLessThan(MOST_NODES);
    assertThat(robot.lookup(".home-row").queryAll()).hasSizeLessThan(MOST_NODES);
  }

  private String selected() {
    return String.valueOf(list.getSelectionModel().getSelectedItem().folder().getFileName());
  }

  /** Whether the whole row is within the list. */
  private boolean seen(FxRobot robot, String row) {
    return Presses.onScreen(
        robot,
        () ->
            robot
                .lookup(row)
                .<Node>tryQuery()
                .map(node -> node.localToScene(node.getLayoutBounds()))
                .filter(box -> within(box, list.localToScene(list.getLayoutBounds())))
                .isPresent());
  }

  private static boolean within(Bounds inner, Bounds outer) {
    return inner.getMinY() >= outer.getMinY() - 1 && inner.getMaxY() <= outer.getMaxY() + 1;
  }
}
