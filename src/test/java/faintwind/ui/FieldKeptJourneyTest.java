package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.Sha256;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.LogConverted;
import faintwind.record.InstrumentState;
import faintwind.ui.frame.Place;
import faintwind.ui.listen.SourceChoiceModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import org.controlsfx.control.RangeSlider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** Field logs are kept with the instrument, looked at by the row, and several on one axis. */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class FieldKeptJourneyTest {
  private static final String DAY = "logs/north-shelf-day.csv";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void aLogThatIsBroughtInIsKeptWithItsHashAndItsCalibration(FxRobot robot) throws IOException {
    Path cellar = Cellar.shipped(folder, "rind-1");
    Path evening = evening(cellar);
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-1");
    robot.interact(() -> journey.window().desk().go().accept(Place.FIELD));
    Waiting.until(() -> journey.there("#field-plot"));
    assertThat(journey.words("#next-sentence")).contains("speeds-north-shelf-day.csv");
    journey.pictures("field-day");
    journey.choose(evening);
    journey.fire("#field-another");
    Waiting.until(() -> journey.there("#field-keep"));
    journey.fire("#field-keep");
    Waiting.until(() -> journey.there("#field-week-log-2"));
    assertThatItIsKept(cellar, evening, journey.state("rind-1"));
    Waiting.until(() -> journey.there("#field-next-log"));
    journey.pictures("field-kept");
    rows(robot, journey);
    journey.fire("#field-week-together");
    Waiting.until(() -> journey.words("#field-title").startsWith("2 logs"));
    // the axis is in days: from Thursday's midnight to Sunday noon
    assertThat(robot.lookup("#field-stretch").queryAs(RangeSlider.class).getMax())
        .isBetween(3.4, 3.6);
    journey.pictures("field-together");
    listen(robot, journey);
    journey.close();
  }

  /** What a person typed while the meter was read is a file of the instrument once it is over. */
  private static void listen(FxRobot robot, Journey journey) {
    journey.fire("#field-listen");
    Waiting.until(() -> journey.there("#source-kind"));
    robot.interact(
        () -> {
          ComboBox<?> kind = robot.lookup("#source-kind").queryAs(ComboBox.class);
          kind.getSelectionModel()
              .select(
                  List.of(SourceChoiceModel.Kind.values()).indexOf(SourceChoiceModel.Kind.TYPED));
        });
    Waiting.until(() -> journey.there("#source-every"));
    robot.interact(
        () -> robot.lookup("#source-every").queryAs(TextInputControl.class).setText("1"));
    journey.fire("#listen-begin");
    Waiting.until(() -> journey.words("#listen-pane").contains("Reading 1"));
    robot.write("1,25\n");
    Waiting.until(() -> journey.words("#listen-pane").contains("1.25"));
    journey.pictures("field-listening");
    journey.fire("#listen-stop");
    Waiting.until(
        () ->
            journey.state("rind-1").standing(FileAdded.class).stream()
                .anyMatch(
                    line ->
                        line.event().kind() == FileRole.FIELD_LOG
                            && line.event().file().startsWith("recordings/recording-")));
  }

  /** The shipped day once more, as if measured from Thursday evening on. */
  private Path evening(Path cellar) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(cellar.resolve(DAY)));
    assertThat(lines.get(1)).startsWith("# start: 2026-09-19");
    lines.set(1, lines.get(1).replace("2026-09-19", "2026-09-17"));
    return Files.write(folder.resolve("evening.csv"), lines.subList(0, 3000));
  }

  private static void assertThatItIsKept(Path cellar, Path evening, InstrumentState state)
      throws IOException {
    LogConverted last = state.last(LogConverted.class).orElseThrow().event();
    assertThat(last.log()).isEqualTo("logs/evening.csv");
    assertThat(last.calibration()).startsWith("calibrations/");
    assertThat(last.sha256()).isEqualTo(Sha256.of(cellar.resolve(last.calibration())));
    assertThat(Sha256.of(cellar.resolve(last.log()))).isEqualTo(Sha256.of(evening));
    assertThat(cellar.resolve(last.speeds())).isNotEmptyFile();
    assertThat(state.standing(FileAdded.class))
        .anyMatch(
            line ->
                line.event().kind() == FileRole.FIELD_LOG && line.event().file().equals(last.log()))
        .anyMatch(
            line ->
                line.event().kind() == FileRole.SPEEDS
                    && line.event().file().equals(last.speeds()));
  }

  private static void rows(FxRobot robot, Journey journey) {
    RangeSlider slider = robot.lookup("#field-stretch").queryAs(RangeSlider.class);
    robot.interact(() -> slider.setHighValue(slider.getMin() + 3600));
    journey.fire("#field-rows-link");
    Waiting.until(() -> journey.there("#field-rows"));
    TableView<?> table = robot.lookup("#field-rows").queryAs(TableView.class);
    int hour = table.getItems().size();
    assertThat(hour).isBetween(300, 400); // a row each ten seconds
    String first = String.valueOf(table.getColumns().get(0).getCellData(0));
    assertThat(first).matches("17 September 2026, \\d\\d:\\d\\d:00");
    assertThat(table.getColumns().get(0).getText()).isEqualTo("Time UTC+02");
    journey.pictures("field-rows");
    robot.interact(() -> slider.setHighValue(slider.getMax()));
    Waiting.until(
        () -> robot.lookup("#field-rows").queryAs(TableView.class).getItems().size() > 2 * hour);
    journey.fire("#field-rows-link");
    assertThat(robot.lookup("#field-rows").tryQuery()).isEmpty();
    assertThat(robot.lookup("#field-rows-link").queryAs(Labeled.class).getText())
        .isEqualTo("Show the rows");
  }
}
