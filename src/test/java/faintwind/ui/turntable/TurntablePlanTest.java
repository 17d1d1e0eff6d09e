package faintwind.ui.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Response;
import faintwind.message.Checked;
import faintwind.physics.Interval;
import faintwind.ui.ScreenStage;
import faintwind.ui.frame.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class TurntablePlanTest {
  private static final Response COPPER =
      new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, 1);

  @TempDir Path tmp;

  private final List<PlannedSession> kept = new ArrayList<>();

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @SuppressWarnings("NullAway.Init")
  private TurntablePlanModel plan;

  @Start
  void start(Stage stage) {
    window = new ScreenStage(stage);
    plan =
        new TurntablePlanModel(
            window.words,
            window.background,
            new TurntablePlanModel.Ways(
                () -> Checked.ok(COPPER),
                kept::add,
                name -> Optional.of(tmp.resolve("sheet.html")),
                "Rind 1"));
    TurntableModel model = new TurntableModel(window.words, window.background, table -> {});
    window.show(
        new TurntableScreen(window.desk, model, Optional.of("Ida"), event -> {})
            .withPlan(new TurntablePlanView(window.desk, plan)));
  }

  private void make(FxRobot robot) throws TimeoutException {
    robot.clickOn("#turntable-way-plan");
    robot.clickOn("#turntable-plan-make");
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> plan.view().get().planned().isPresent());
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void planIsMadeShownKeptAndPrinted(FxRobot robot) throws Exception {
    make(robot);
    assertThat(robot.lookup("#turntable-plan-steps").tryQuery()).isPresent();
    robot.interact(() -> window.picture("turntable-plan-light"));
    robot.interact(() -> window.theme(Theme.DARK));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("turntable-plan-dark"));
    robot.interact(() -> plan.form().set(Plan.Form.SEPARATE));
    assertThat(plan.shown().orElseThrow().form()).isEqualTo(Plan.Form.SEPARATE);
    assertThat(plan.isUnsaved()).isTrue();
    robot.interact(() -> plan.saveSheet());
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> plan.view().get().done().contains("sheet.html"));
    assertThat(plan.next().get().act().orElseThrow().id())
        .as("a printed plan is not a kept one")
        .isEqualTo("turntable-plan-keep");
    robot.interact(() -> plan.keep());
    assertThat(plan.isUnsaved()).isFalse();
    assertThat(kept).hasSize(1);
    assertThat(plan.next().get().sentence()).isEqualTo("Kept with the instrument.");
    assertThat(plan.next().get().act().orElseThrow().id()).isEqualTo("turntable-plan-guide");
    robot.interact(() -> plan.saveSheet());
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> plan.view().get().done().contains("sheet.html"));
    assertThat(Files.readString(tmp.resolve("sheet.html"))).contains("Run sheet, Rind 1");
  }

  @Test
  void whatIsNoNumberIsSaidAndNothingIsPlanned(FxRobot robot) {
    robot.clickOn("#turntable-way-plan");
    robot.interact(
        () -> {
          plan.radii().get(0).set("-600");
          plan.number(PlanField.FASTEST).set("");
          plan.plan();
        });
    assertThat(plan.view().get().refused()).isTrue();
    assertThat(plan.view().get().problems())
        .anyMatch(s -> s.contains("Radius to the ball's centre -600 mm is outside its range"))
        .anyMatch(s -> s.startsWith("Fastest speed is empty"));
  }

  @Test
  void cableTooShortIsRefusedInWords(FxRobot robot) throws TimeoutException {
    robot.interact(
        () -> {
          plan.way().set(DataWay.Kind.CABLE);
          plan.number(PlanField.CABLE_TURNS).set("5");
          plan.plan();
        });
    WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> plan.view().get().refused());
    assertThat(plan.view().get().problems())
        .anyMatch(s -> s.contains("The cable takes 5 turns to either side"));
  }
}
