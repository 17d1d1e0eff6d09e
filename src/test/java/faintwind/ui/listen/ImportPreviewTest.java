package faintwind.ui.listen;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineReader;
import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.ValueUnit;
import faintwind.job.field.ForeignLog;
import faintwind.job.formula.Profiles;
import faintwind.ui.ScreenStage;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Theme;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class ImportPreviewTest {
  private static final Path SAMPLE = Path.of("assets/profiles/semicolons-clock.sample.csv");

  @SuppressWarnings("NullAway.Init") // TestFX calls start first
  private ScreenStage window;

  @SuppressWarnings("NullAway.Init")
  private ImportModel model;

  private final List<ImportProfile> used = new ArrayList<>();

  @Start
  void start(Stage stage) throws IOException {
    window = new ScreenStage(stage);
    model =
        new ImportModel(
            window.words,
            "semicolons-clock.sample.csv",
            ForeignLog.firstLines(SAMPLE).fold((lines, notes) -> lines, problems -> List.of()),
            LineReader.Begin.FILE);
    ImportPreview preview = new ImportPreview(window.words, model, Profiles.shipped(), used::add);
    VBox sheet = new VBox(preview);
    sheet.getStyleClass().addAll("sheet", "data-sheet");
    window.show(
        DataScreen.of(
            window.desk,
            sheet,
            new ReadOnlyObjectWrapper<>(Next.say(Mark.READY, "Say what it means"))));
  }

  private boolean useIsOff(FxRobot robot) {
    return robot.lookup("#import-use").queryAs(Button.class).isDisabled();
  }

  @Test
  void eachChangeShowsAtOnceWhatIsUnderstood(FxRobot robot) {
    assertThat(useIsOff(robot)).isTrue();
    assertThat(model.view().get().problems().get(0))
        .contains("semicolons-clock.sample.csv, line 2");
    robot.interact(() -> model.delimiter().set(';'));
    robot.interact(() -> model.decimalMark().set(','));
    robot.clickOn("#import-header").eraseText(1).write("x");
    assertThat(robot.lookup("#import-header").query().getStyleClass()).contains("refused");
    robot.clickOn("#import-header").eraseText(1).write("3");
    assertThat(robot.lookup("#import-header").query().getStyleClass()).doesNotContain("refused");
    robot.interact(() -> model.timeForm().set(TimeForm.CLOCK));
    robot.clickOn("#import-time-column").eraseText(1).write("Uhrzeit");
    robot.clickOn("#import-column-1").eraseText(1).write("U");
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("import-doubt"));
    assertThat(model.view().get().problems())
        .singleElement()
        .asString()
        .contains("line 7", "\"---\" is not a number");
    assertThat(useIsOff(robot)).isFalse();
    robot.clickOn("#import-missing").write("---");
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(model.view().get().fits()).isTrue();
    robot.interact(() -> robot.lookup("#import-use").queryAs(Button.class).fire());
    assertThat(used).hasSize(1);
    assertThat(used.get(0).columns().get(0).unit()).isEqualTo(ValueUnit.MILLIVOLT);
  }

  @Test
  void aShippedProfileFillsTheChoicesAndFits(FxRobot robot) throws IOException {
    ImportProfile shipped =
        Profiles.find("semicolons-clock").fold((ok, notes) -> ok, problems -> null);
    robot.interact(
        () -> {
          @SuppressWarnings("unchecked")
          ComboBox<ImportProfile> begin = robot.lookup("#import-begin").queryAs(ComboBox.class);
          begin.setValue(shipped);
        });
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(() -> window.picture("import-fits"));
    robot.interact(() -> window.theme(Theme.DARK));
    robot.interact(() -> window.picture("import-fits-dark"));
    assertThat(model.view().get().fits()).isTrue();
    assertThat(model.view().get().understood().orElseThrow().rows()).hasSize(5);
    assertThat(model.view().get().profile().orElseThrow().columns()).isEqualTo(shipped.columns());
    robot.interact(() -> model.rows().get(1).meaning().set(Meaning.SUPPLY));
    assertThat(model.rows().get(1).unit().get()).isEqualTo(ValueUnit.VOLT);
    robot.interact(() -> model.removeRow(model.rows().get(1)));
    assertThat(model.rows()).hasSize(1);
    assertThat(robot.lookup("#import-column-2").tryQuery()).isEmpty();
  }
}
