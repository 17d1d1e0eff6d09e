package faintwind.ui.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Measured.By;
import faintwind.calibration.Origin;
import faintwind.guide.InForceGate;
import faintwind.job.JobWatch;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.ExportFormula;
import faintwind.job.formula.KeepFormula;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.job.formula.LeaveOut;
import faintwind.job.formula.MeasuredKnown;
import faintwind.job.formula.MeasuredWhen;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.InstrumentState;
import faintwind.ui.ScreenStage;
import faintwind.ui.frame.Theme;
import faintwind.ui.part.Mark;
import faintwind.ui.work.Running;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class FormulaScreenTest {
  private static final Path RUNS = Path.of("src/test/resources/sample-runs/bench-c/in/runs.csv");

  private final List<String> journal = new ArrayList<>();
  private boolean heldUp;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @SuppressWarnings("NullAway.Init")
  private FormulaModel model;

  @Start
  void start(Stage stage) {
    window = new ScreenStage(stage);
    model = new FormulaModel(window.words, window.background, new Folder());
    window.show(new FormulaScreen(window.desk, model));
  }

  /** A folder without a journal: what would be entered stands in a list. */
  private final class Folder implements FormulaWays {
    private KeepFormula job(MeasuredWhen said) {
      return new KeepFormula(
          folder,
          new Calibrate(
              window.desk.clock(),
              window.words,
              new Calibrate.Settings(
                  Optional.of("Rind 1"),
                  4,
                  OptionalDouble.empty(),
                  Optional.empty(),
                  said,
                  List.of(),
                  Calibrate.RunFiles.WITH_THE_TABLE)));
    }

    @Override
    public Checked<MeasuredKnown> known(Path table) throws IOException {
      return MeasuredKnown.of(table);
    }

    @Override
    public Checked<Kept> fit(Path table, MeasuredWhen said, JobWatch watch) throws IOException {
      return job(said).fit(table, watch);
    }

    @Override
    public void leaveOut(Path table, LeaveOut.Choice choice, Consumer<Checked<Path>> told) {
      journal.add("left out " + choice.run() + ": " + choice.reason());
    }

    @Override
    public Optional<Checked<Kept>> read() {
      return Optional.empty();
    }

    @Override
    public boolean isInForce(String file) {
      return true;
    }

    @Override
    public Kept drawnAgain(Kept kept, JobWatch watch) {
      return kept;
    }

    @Override
    public void made(Kept kept) {
      journal.add("made " + kept.file());
    }

    @Override
    public InForceGate.Answer gate(Kept kept) {
      return new InForceGate.Answer(
          heldUp
              ? List.of(Problem.error("in-force.build-off", Where.file(kept.file()), ""))
              : List.of(),
          List.of(Problem.warning("open.step", Where.NOWHERE, "Cure the glue")));
    }

    @Override
    public List<Problem> whyNotExplained(String reason) {
      return InForceGate.refusals(InstrumentState.EMPTY, reason, "Ida Test");
    }

    @Override
    public void forceExplained(String file, String reason) {
      journal.add("explained " + file + ": " + reason);
    }

    @Override
    public void putInForce(String file) {
      journal.add("in force " + file);
    }

    @Override
    public Checked<String> writeBuildLog() {
      return Checked.ok("reports/build-log.html");
    }

    @Override
    public Optional<String> due() {
      return Optional.empty();
    }

    @Override
    public void toTurntable() {
      journal.add("turntable");
    }

    @Override
    public Checked<Path> export(String file, ExportFormula.Kind kind, Path target) {
      return Checked.ok(target);
    }

    @Override
    public void toField() {
      journal.add("field");
    }
  }

  private FormulaModel.Stage stage() {
    return model.view().get().stage();
  }

  @Test
  void runsAreFittedShownAndPutInForce(FxRobot robot) throws TimeoutException {
    robot.interact(() -> model.begin(Optional.of(RUNS)));
    sayWhen(robot);
    robot.clickOn("#formula-fit");
    WaitForAsyncUtils.waitFor(120, TimeUnit.SECONDS, () -> stage() != FormulaModel.Stage.FITTING);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(model.view().get().problems()).isEmpty();
    assertThat(stage()).isEqualTo(FormulaModel.Stage.FITTED);
    assertThatItIsMeasuredAsSaid();
    robot.interact(() -> window.picture("formula-light"));
    robot.interact(() -> window.theme(Theme.DARK));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("formula-dark"));
    assertThat(robot.lookup("#formula-title").queryAs(Label.class).getText())
        .containsPattern("from [0-9.]+ to [0-9.]+\\hm/s, within [0-9.]+\\h%");
    assertThat(robot.lookup("#formula-loss").tryQuery()).isPresent();
    assertThat(robot.lookup("#formula-margin").tryQuery()).isPresent();
    assertThat(robot.lookup("#formula-straight").tryQuery()).isPresent();
    assertThat(robot.lookup("#formula-rise-note").queryAs(Label.class).getText())
        .startsWith("10–90\u00a0%, the estimate: over that time");
    assertThat(
            robot
                .from(robot.lookup("#formula-margin").<Node>query())
                .lookup(".label")
                .queryAllAs(Label.class))
        .extracting(Label::getText)
        .anyMatch(text -> text.contains("\u2212"))
        .noneMatch(text -> text.matches(".*(^|[ (])-\\d.*"));
    assertThat(robot.lookup("#formula-recording-2").tryQuery()).isPresent();
    assertThat(folder.resolve("calibrations/2026-11-21.json")).exists();
    assertThat(folder.resolve("calibrations/2026-11-21.html")).exists();
    leaveOutTheFirstRun(robot);
    robot.clickOn("#formula-force");
    assertThat(journal)
        .containsExactly(
            "made calibrations/2026-11-21.json",
            "left out zero: the plug was loose",
            "in force calibrations/2026-11-21.json");
    assertThat(model.next().get().mark()).isEqualTo(Mark.DONE);
    robot.clickOn("#formula-field");
    assertThat(journal).endsWith("field");
  }

  private static void leaveOutTheFirstRun(FxRobot robot) {
    robot.interact(
        () -> {
          robot.lookup("#leave-out-run").queryAs(ComboBox.class).getSelectionModel().select(0);
          robot.lookup("#leave-out-reason").queryAs(TextField.class).setText("the plug was loose ");
          robot.lookup("#leave-out-go").queryAs(Button.class).fire();
        });
  }

  /** The sample runs do not say when they were measured. */
  private static void sayWhen(FxRobot robot) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> robot.lookup("#measured-day").tryQuery().isPresent());
    robot.interact(
        () -> {
          robot.lookup("#measured-day").queryAs(TextField.class).setText("2026-11-20 16:15");
          robot.lookup("#measured-place").queryAs(TextField.class).setText("the barn");
        });
  }

  private void assertThatItIsMeasuredAsSaid() {
    Origin origin = model.view().get().made().orElseThrow().formula().calibration().origin();
    assertThat(origin.validFrom()).isEqualTo("2026-11-20T16:15Z");
    assertThat(origin.measured().orElseThrow().by(By.PLACE)).hasValue("the barn");
  }

  @Tag("long")
  @Test
  void aFitThatDoesNotMeetItsBuildNeedsAReason(FxRobot robot) throws TimeoutException {
    heldUp = true;
    robot.interact(() -> model.begin(Optional.of(RUNS)));
    robot.clickOn("#formula-fit");
    WaitForAsyncUtils.waitFor(120, TimeUnit.SECONDS, () -> stage() != FormulaModel.Stage.FITTING);
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("formula-held-up"));
    assertThat(robot.lookup("#formula-force").tryQuery()).isEmpty();
    assertThat(robot.lookup("#formula-open").tryQuery()).isPresent();
    Button go = robot.lookup("#formula-build-explain").queryButton();
    assertThat(go.isDisabled()).isTrue();
    TextField reason = robot.lookup("#formula-build-reason").queryAs(TextField.class);
    robot.interact(() -> reason.setText("x"));
    assertThat(go.isDisabled()).isTrue();
    robot.interact(() -> reason.setText("The ball is brass, weighed again"));
    assertThat(go.isDisabled()).isFalse();
    robot.interact(go::fire);
    assertThat(journal)
        .containsExactly(
            "made calibrations/2026-11-21.json",
            "explained calibrations/2026-11-21.json: The ball is brass, weighed again");
    assertThat(model.next().get().sentence()).contains("in force");
  }

  @Test
  void stoppedFitWritesNothingAndCanBeStartedAgain(FxRobot robot) throws TimeoutException {
    robot.interact(() -> model.begin(Optional.of(RUNS)));
    robot.interact(() -> model.fit());
    robot.interact(() -> model.work().ifPresent(Running::cancel));
    WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> stage() != FormulaModel.Stage.FITTING);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(stage()).isEqualTo(FormulaModel.Stage.READY);
    assertThat(folder.resolve("calibrations")).doesNotExist();
    assertThat(model.next().get().detail()).contains("nothing was written");
  }

  @Test
  void runsThatCannotBeFittedAreRefusedWithEveryReason(FxRobot robot)
      throws IOException, TimeoutException {
    Path table = Files.writeString(folder.resolve("runs.csv"), "run,file,kind\nx,none.csv,spin\n");
    robot.interact(() -> model.begin(Optional.of(table)));
    robot.interact(() -> model.fit());
    WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> stage() != FormulaModel.Stage.FITTING);
    assertThat(stage()).isEqualTo(FormulaModel.Stage.REFUSED);
    assertThat(model.view().get().problems()).anyMatch(p -> p.contains("none.csv"));
    assertThat(journal).isEmpty();
  }

  @Test
  void withoutRunsTheWayLeadsToTheTurntable(FxRobot robot) {
    assertThat(robot.lookup("#margin-pane").tryQuery()).isEmpty(); // it has nothing to say yet
    robot.clickOn("#formula-runs");
    assertThat(journal).containsExactly("turntable");
  }
}
