package faintwind.ui.air;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.speed.SpeedRow;
import faintwind.message.Typeset;
import faintwind.report.plot.MadeUpCalibration;
import faintwind.ui.Presses;
import faintwind.ui.ScreenStage;
import faintwind.ui.listen.ListenModel;
import faintwind.ui.listen.LoggerWays;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class AirScreenTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  static Path folder;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @Start
  void start(Stage stage) {
    window = new ScreenStage(stage);
  }

  private AirWays ways() {
    return new AirOnPaper(Optional.empty());
  }

  @Test
  void theDrawingShowsWhatIsReadAndWhereOneGoesNext(FxRobot robot) {
    FlowModel model = new FlowModel(window.words, window.background, ways());
    robot.interact(() -> window.show(new FlowScreen(window.desk, model, new VBox())));
    robot.interact(
        () -> {
          model.form().number("width_mm").set("315");
          model.form().number("ball_mm").set("8");
          model.lay();
        });
    assertThat(robot.lookup("#flow-readings").query().isVisible()).isFalse();
    Presses.fire(robot, "#caution-opening-read");
    assertThat(robot.lookup("#flow-readings").query().isVisible()).isTrue();
    assertThat(robot.lookup(".opening-point").queryAll()).hasSize(16);
    robot.interact(() -> robot.lookup("#air-1-speed").query().requestFocus());
    robot.write("0,42");
    robot.interact(() -> robot.lookup("#air-1-u95").query().requestFocus());
    robot.write("0.02");
    robot.interact(() -> robot.lookup("#air-2-speed").query().requestFocus());
    assertThat(robot.lookup(".opening-done").queryAll()).hasSize(1);
    // 0.1 of 315 mm of a drawing that is 240 wide, its edge 24
    Circle next = robot.lookup(".opening-next").queryAs(Circle.class);
    assertThat(next.getCenterX()).isEqualTo(24 + 240 * 0.1);
    robot.interact(() -> window.picture("flow"));
  }

  @Test
  void aPlaceHasItsSpeedFromTheInstrumentThatIsListenedTo(FxRobot robot) {
    SurveyModel model = new SurveyModel(window.words, window.background, ways());
    ListenModel recording = new ListenModel(window.words, Platform::runLater, folder);
    LoggerWays logger = new LoggerWays(window.desk, folder, recording);
    model.at(ways(), Optional.of(MadeUpCalibration.of("2026-10-14T10:00:00+02:00")));
    robot.interact(
        () ->
            window.show(
                new SurveyScreen(window.desk, model, new VBox())
                    .withLive(new LiveAirPane(window.desk, model.live(), logger))));
    robot.interact(() -> robot.lookup("#survey-place-1").query().requestFocus());
    robot.write("sill");
    robot.interact(() -> robot.lookup("#survey-place-2").query().requestFocus());
    robot.write("door");
    assertThat(robot.lookup("#live-air-now").query().isVisible()).isFalse();
    SpeedRow row = new SpeedRow(OptionalDouble.of(0.3), OptionalDouble.of(0.02), Set.of());
    robot.interact(() -> model.live().speed(0, row));
    assertThat(robot.lookup("#live-air-speed").queryAs(Label.class).getText())
        .isEqualTo(Typeset.of("0.300 ± 0.020 m/s"));
    robot.interact(() -> robot.lookup("#live-here").queryAs(Labeled.class).requestFocus());
    Presses.fire(robot, "#live-here");
    robot.interact(
        () -> {
          for (int t = 1; t < 2000; t++) {
            model.live().speed(t, row);
          }
          model.live().look();
        });
    robot.interact(() -> window.picture("survey-live"));
    Presses.fire(robot, "#live-take");
    assertThat(robot.lookup("#air-1-speed").queryAs(TextInputControl.class).getText())
        .isEqualTo("0.3000");
    Presses.fire(robot, "#survey-add");
    assertThat(robot.lookup("#survey-place-4").query().isDisabled()).isTrue();
  }

  @Test
  void theFiguresStandBesideTheirPlot(FxRobot robot) throws IOException, TimeoutException {
    StringBuilder text = new StringBuilder("time_s,speed_m_s,u95_m_s,flag\n");
    for (int t = 0; t < 9000; t += 10) {
      text.append(t).append(",0.3,0.02,\n");
    }
    ConvertedLog log =
        new ConvertedLog(Files.writeString(folder.resolve("day.csv"), text), Optional.empty());
    robot.interact(
        () ->
            window.show(
                new SummaryScreen(
                    window.desk,
                    new SummaryModel(
                        window.words,
                        window.background,
                        name -> Optional.empty(),
                        new AirOnPaper(Optional.of(log))),
                    new VBox())));
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> robot.lookup("#summary-hours").tryQuery().isPresent());
    WaitForAsyncUtils.waitForFxEvents();
    TableView<?> hours = robot.lookup("#summary-hours").queryAs(TableView.class);
    assertThat(hours.getItems()).hasSize(3);
    assertThat(
            robot
                .from(robot.lookup("#summary-margin").<Node>query())
                .lookup(".label")
                .queryAllAs(Label.class))
        .extracting(Label::getText)
        .anyMatch(line -> line.startsWith(Typeset.of("Mean: 0.300 ± 0.020 m/s")));
    robot.interact(() -> window.picture("summary"));
  }
}
