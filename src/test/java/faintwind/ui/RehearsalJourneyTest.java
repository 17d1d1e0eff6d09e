package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.job.WindowChoices;
import faintwind.job.live.LiveSession;
import faintwind.job.turntable.ReadRuns;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.frame.KeptLook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * A newcomer rehearses alone: from Home through cautions, warm-up and three speeds at a hundred
 * times the pace to a recording, its runs table and a formula, all marked as rehearsal.
 */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class RehearsalJourneyTest {
  private static final int SESSION_S = 120;
  private static final int FIT_S = 180;

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
  void rehearsalEndsInRunsAndAFormulaThatSayWhatTheyAre(FxRobot hands) throws IOException {
    robot = hands;
    new WindowChoices(100, "light", true, "").write(folder);
    openWindow();
    fire("#first-rehearse");
    fire("#caution-spinning-arm-read");
    picture("rehearsal-start");
    for (String caution :
        List.of("eyes", "hair", "circle", "loose", "tip-speed", "guard", "start")) {
      assertThat(there("#rehearse-short")).isFalse();
      fire("#caution-" + caution + "-read");
    }
    fire("#rehearse-short");
    fire("#live-pace-100");
    fire("#live-heater-on");
    picture("rehearsal-warming");
    for (int spin = 1; spin <= 3; spin++) {
      fire("#live-spin");
      picture("rehearsal-spin-" + spin);
      fire("#live-stopped");
    }
    fire("#live-runs");
    Waiting.until(() -> there("#recording-1"));
    picture("rehearsal-runs");
    assertRuns(folder.resolve("rehearsal/runs/live-1/" + LiveSession.TABLE));

    fire("#turntable-fit");
    fire("#formula-fit");
    Waiting.within(FIT_S, () -> there("#formula-practice"));
    picture("rehearsal-formula");
    assertThat(there("#formula-force")).isFalse();
    assertCalibration();
  }

  private static void assertRuns(Path table) throws IOException {
    Checked<RunSet> read = ReadRuns.read(table);
    assertThat(read.isOk()).isTrue();
    assertThat(read.problems()).extracting(Problem::id).contains("file.rehearsal");
    List<Run> runs = read.fold((set, notes) -> set.runs(), problems -> List.of());
    assertThat(runs).hasSize(6);
    assertThat(runs.stream().map(Run::file).distinct()).containsExactly("session.csv");
  }

  private void assertCalibration() throws IOException {
    Path calibrations = folder.resolve("rehearsal/calibrations");
    try (var files = Files.list(calibrations)) {
      Path made = files.filter(f -> f.toString().endsWith(".json")).findFirst().orElseThrow();
      assertThat(Files.readString(made)).contains("file.rehearsal").contains("(rehearsal)");
    }
  }

  private void openWindow() {
    robot.interact(
        () -> {
          FaintwindApp.dressProgram();
          stage = new Stage();
          Clock clock = Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC);
          new FaintwindWindow(
                  stage, Messages.of(Locale.ENGLISH), KeptLook.in(folder), clock, NoFiles.ASKED)
              .show();
        });
  }

  private void picture(String name) {
    robot.interact(
        () -> Pictures.keep(stage.getScene(), Path.of("target/pictures/" + name + ".png")));
  }

  /** Waits for a button or link and presses it, in one go: the screens are drawn anew often. */
  private void fire(String id) {
    AtomicBoolean pressed = new AtomicBoolean();
    Waiting.within(
        SESSION_S,
        () -> {
          robot.interact(() -> pressed.set(press(id)));
          return pressed.get();
        });
  }

  private boolean press(String id) {
    Optional<ButtonBase> button =
        robot
            .lookup(id)
            .match(node -> node.isVisible() && !node.isDisabled())
            .tryQueryAs(ButtonBase.class);
    button.ifPresent(ButtonBase::fire);
    return button.isPresent();
  }

  private boolean there(String id) {
    return robot.lookup(id).tryQuery().filter(Node::isVisible).isPresent();
  }
}
