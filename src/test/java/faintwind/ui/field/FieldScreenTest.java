package faintwind.ui.field;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.speed.SpeedFlag;
import faintwind.files.calibration.CalibrationFile;
import faintwind.report.plot.MadeUpCalibration;
import faintwind.ui.ScreenStage;
import faintwind.ui.frame.Theme;
import faintwind.ui.listen.ListenModel;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.part.PlotCard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.controlsfx.control.RangeSlider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class FieldScreenTest {
  private static final Path LOG =
      Path.of("src/test/resources/sample-runs/bench-a/in/field_gusts.csv");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  static Path folder;

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @SuppressWarnings("NullAway.Init")
  private FieldModel model;

  @Start
  void start(Stage stage) {
    window = new ScreenStage(stage);
    model =
        new FieldModel(window.words, window.background, name -> Optional.of(folder.resolve(name)));
    ListenModel recording = new ListenModel(window.words, Platform::runLater, folder);
    LoggerWays ways = new LoggerWays(window.desk, folder, recording);
    window.show(new FieldScreen(window.desk, model).withLogger(ways));
  }

  @Test
  void logIsShownWithItsFlagsAndSavedWithEveryRow(FxRobot robot)
      throws IOException, TimeoutException {
    Path calibration = folder.resolve("cal.json");
    CalibrationFile.write(calibration, MadeUpCalibration.of("2026-10-14T10:00:00+02:00"));
    Path log = startedLog();
    window.choose(calibration);
    assertThat(robot.lookup("#margin-pane").tryQuery()).isEmpty(); // it has nothing to say yet
    robot.clickOn("#field-calibration-choose");
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> model.view().get().calibration().isPresent());
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(robot.lookup("#field-margin").tryQuery()).isPresent();
    window.choose(log);
    robot.clickOn("#field-drop-choose");
    WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> model.view().get().look().isPresent());
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("field-light"));
    robot.interact(() -> window.theme(Theme.DARK));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("field-dark"));
    assertThat(robot.lookup("#field-title").queryAs(Label.class).getText())
        .startsWith("21 November 2026: ");
    assertThat(
            robot
                .from(robot.lookup("#field-margin").<Node>query())
                .lookup(".bold")
                .queryAllAs(Label.class))
        .extracting(Label::getText)
        .anyMatch(text -> text.matches("0\\.\\d{3} ±\\h0\\.\\d{3}\\hm/s on average"));
    assertThatThePlotCanBeRead(robot);
    assertThatAStretchCanBePicked(robot);
    robot.clickOn("#field-save");
    Path saved = folder.resolve("gusts-speeds.csv");
    WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> Files.exists(saved));
    assertThat(Files.readAllLines(saved).stream().filter(l -> !l.startsWith("#")).count())
        .isEqualTo(Files.readAllLines(log).stream().filter(l -> !l.startsWith("#")).count());
  }

  private void assertThatAStretchCanBePicked(FxRobot robot) throws TimeoutException {
    RangeSlider slider = robot.lookup("#field-stretch").queryAs(RangeSlider.class);
    PlotCard whole = robot.lookup("#field-plot").queryAs(PlotCard.class);
    String summary = whole.getAccessibleText();
    double middle = (slider.getMin() + slider.getMax()) / 2;
    robot.interact(() -> slider.setHighValue(middle));
    WaitForAsyncUtils.waitFor(
        10,
        TimeUnit.SECONDS,
        () -> robot.lookup("#field-plot").queryAs(PlotCard.class).getScene() != whole.getScene());
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("field-stretch"));
    PlotCard picked = robot.lookup("#field-plot").queryAs(PlotCard.class);
    assertThat(picked.getAccessibleText()).isNotEqualTo(summary);
    assertThat(slider.getAccessibleText()).startsWith("21 November 2026, 08:00:");
    robot.interact(() -> slider.setHighValue(slider.getMax()));
    WaitForAsyncUtils.waitFor(
        10,
        TimeUnit.SECONDS,
        () ->
            robot
                .lookup("#field-plot")
                .queryAs(PlotCard.class)
                .getAccessibleText()
                .equals(summary));
  }

  private void assertThatThePlotCanBeRead(FxRobot robot) {
    PlotCard card = robot.lookup("#field-plot").queryAs(PlotCard.class);
    String summary = card.getAccessibleText();
    robot.interact(card::requestFocus);
    robot.press(KeyCode.SHIFT).type(KeyCode.RIGHT, 2).type(KeyCode.DOWN).release(KeyCode.SHIFT);
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("field-read"));
    assertThat(robot.lookup("#plot-reading").queryAs(Label.class).getText())
        .matches("What was recorded: .*: time of day 0\\d:\\d\\d:\\d\\d: [0-9.]+")
        .isEqualTo(card.getAccessibleText());
    robot.type(KeyCode.ESCAPE);
    assertThat(robot.lookup("#plot-reading").tryQuery()).isEmpty();
    assertThat(card.getAccessibleText()).isEqualTo(summary);
    robot.interact(card::toggleTable);
    assertThat(card.lookupAll(".plot-table")).hasSize(1);
    robot.interact(card::toggleTable);
  }

  @Test
  void aFileThatIsNoLogIsRefusedWithItsPlace(FxRobot robot) throws IOException, TimeoutException {
    Path calibration = folder.resolve("cal2.json");
    CalibrationFile.write(calibration, MadeUpCalibration.of("2026-10-14T10:00:00+02:00"));
    robot.interact(() -> model.useCalibration(calibration));
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> model.view().get().calibration().isPresent());
    Path wrong = Files.writeString(folder.resolve("wrong.csv"), "a,b\n1,2\n");
    robot.interact(() -> model.open(wrong));
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> !model.view().get().problems().isEmpty());
    assertThat(model.view().get().problems()).anyMatch(p -> p.contains("wrong.csv"));
    assertThat(model.next().get().act()).isEmpty();
    assertThat(model.view().get().look()).isEmpty();
  }

  /** The sample log with a date at its head. */
  private static Path startedLog() throws IOException {
    List<String> lines = Files.readAllLines(LOG);
    Path log = folder.resolve("gusts.csv");
    return Files.writeString(
        log, "# start: 2026-11-21T08:00:00+01:00\n" + String.join("\n", lines) + "\n");
  }

  @Test
  void everyFlagHasItsOwnWord() {
    for (SpeedFlag flag : SpeedFlag.values()) {
      assertThat(window.words.text("convert.flag." + flag.word())).isNotBlank();
    }
  }

  @Test
  void aLogOfAnotherLoggerIsReadByAProfileOfTheInstrument(FxRobot robot)
      throws IOException, TimeoutException {
    Path calibration = folder.resolve("cal3.json");
    CalibrationFile.write(calibration, MadeUpCalibration.of("2026-10-14T10:00:00+02:00"));
    Path profile = Files.createDirectories(folder.resolve("profiles")).resolve("cellar.json");
    Files.writeString(
        profile,
        """
        {"format": "faintwind-profile/1", "id": "cellar", "name": "made up", "delimiter": ";",
         "decimal_mark": ",", "header_lines": 1, "time": {"as": "min", "column": "t"},
         "columns": [{"column": "dT", "means": "signal", "unit": "K"}]}
        """);
    StringBuilder rows = new StringBuilder("t;dT\n");
    for (int i = 0; i < 300; i++) {
      rows.append(String.format(Locale.ROOT, "%.2f;%.2f%n", 0.05 * i, 20 + Math.sin(i / 30.0)));
    }
    Path log = folder.resolve("foreign.txt");
    Files.writeString(log, rows.toString().replace('.', ','));
    robot.interact(() -> model.useCalibration(calibration));
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> model.view().get().calibration().isPresent());
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("field-ways"));
    window.choose(log);
    robot.clickOn("#field-foreign");
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> robot.lookup("#import-begin").tryQuery().isPresent());
    robot.interact(
        () -> robot.lookup("#import-begin").queryAs(ComboBox.class).getSelectionModel().select(0));
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> robot.lookup("#import-use").queryAs(Button.class).fire());
    WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> model.view().get().look().isPresent());
    assertThat(model.view().get().look().orElseThrow().summary().rows()).isEqualTo(300);
  }

  @Test
  void aForeignLogThatIsBroughtInIsAskedAboutBeginningWithADraft(FxRobot robot)
      throws IOException, TimeoutException {
    Path calibration = folder.resolve("cal4.json");
    CalibrationFile.write(calibration, MadeUpCalibration.of("2026-10-14T10:00:00+02:00"));
    StringBuilder rows = new StringBuilder("time [min];dT [K]\n");
    for (int i = 0; i < 300; i++) {
      rows.append(String.format(Locale.ROOT, "%.2f;%.2f%n", 0.05 * i, 20 + Math.sin(i / 30.0)));
    }
    Path log = folder.resolve("dropped.txt");
    Files.writeString(log, rows.toString().replace('.', ','));
    robot.interact(() -> model.useCalibration(calibration));
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> model.view().get().calibration().isPresent());
    robot.interact(() -> model.open(log));
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> robot.lookup("#import-begin").tryQuery().isPresent());
    assertThat(robot.lookup("#import-use").queryAs(Button.class).isDisabled()).isFalse();
    robot.interact(() -> robot.lookup("#import-use").queryAs(Button.class).fire());
    WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> model.view().get().look().isPresent());
    assertThat(model.view().get().look().orElseThrow().summary().rows()).isEqualTo(300);
  }
}
