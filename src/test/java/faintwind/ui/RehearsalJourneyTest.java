package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.job.WindowChoices;
import faintwind.job.live.LiveSession;
import faintwind.job.turntable.ReadRuns;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.scene.control.ButtonBase;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
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

  @SuppressWarnings("NullAway.Init") // each test has its own
  private FxRobot robot;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) {
    robot = hands;
    journey = Journey.of(hands, folder);
  }

  @AfterEach
  void close() {
    journey.close();
  }

  @Test
  void rehearsalEndsInRunsAndAFormulaThatSayWhatTheyAre() throws IOException {
    new WindowChoices(100, "light", true, "", "").write(folder);
    journey.open();
    fire("#first-rehearse");
    fire("#caution-spinning-arm-read");
    journey.picture("rehearsal-start");
    for (String caution :
        List.of("eyes", "hair", "circle", "loose", "tip-speed", "guard", "start")) {
      assertThat(journey.there("#rehearse-short")).isFalse();
      fire("#caution-" + caution + "-read");
    }
    fire("#rehearse-short");
    fire("#live-pace-100");
    fire("#live-heater-on");
    journey.picture("rehearsal-warming");
    for (int spin = 1; spin <= 3; spin++) {
      fire("#live-spin");
      journey.picture("rehearsal-spin-" + spin);
      fire("#live-stopped");
    }
    fire("#live-runs");
    Waiting.until(() -> journey.there("#recording-1"));
    journey.picture("rehearsal-runs");
    assertRuns(folder.resolve("rehearsal/runs/live-1/" + LiveSession.TABLE));

    assertThat(journey.state("rehearsal").standing(FileAdded.class))
        .as("what was recorded is on record before anybody keeps the runs")
        .anyMatch(
            line ->
                line.event().kind() == FileRole.RUN
                    && line.event().file().equals("runs/live-1/session.csv"));
    fire("#turntable-fit");
    fire("#formula-fit");
    Waiting.within(FIT_S, () -> journey.there("#formula-practice"));
    journey.picture("rehearsal-formula");
    assertThat(journey.there("#formula-force")).isFalse();
    assertCalibration();
  }

  /** The builder plans on the own instrument, rehearses that very plan, and stops early. */
  @Test
  void theBuildersOwnPlanIsRehearsedBeforeTheArmMayTurn() throws IOException {
    journey.asked();
    Cellar.begin("Attic").design().into(folder, "attic");
    journey.open();
    fire("#open-first");
    fire("#place-turntable");
    fire("#caution-spinning-arm-read");
    fire("#turntable-way-plan");
    fire("#turntable-plan-make");
    fire("#turntable-plan-keep");
    fire("#turntable-plan-guide");
    Waiting.until(() -> journey.there("#live-to-safety"));
    fire("#rehearse-plan");
    fire("#caution-spinning-arm-read");
    for (String caution :
        List.of("eyes", "hair", "circle", "loose", "tip-speed", "guard", "start")) {
      fire("#caution-" + caution + "-read");
    }
    fire("#rehearse-own");
    fire("#live-pace-100");
    Waiting.until(() -> journey.there("#live-path"));
    assertThat(journey.words("#live-path")).startsWith("One warm-up, ").doesNotContain(" 3 speeds");
    fire("#live-heater-on");
    fire("#live-wrong");
    fire("#wrong-draught");
    fire("#live-go-on");
    fire("#live-spin");
    fire("#live-stop-early");
    fire("#live-end");
    Waiting.until(() -> journey.there("#recording-1"));
    String table = Files.readString(folder.resolve("rehearsal/runs/live-1/" + LiveSession.TABLE));
    assertThat(table).contains("air moved in the room").contains(",spin,");
    assertThat(folder.resolve("attic/runs")).isEmptyDirectory();
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
}
