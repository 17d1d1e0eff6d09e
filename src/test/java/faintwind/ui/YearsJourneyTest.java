package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.WindowChoices;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.frame.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * An instrument over the years: its logs by the week, two calibrations of it, and when it is due.
 * {@code -Dyears.pictures=FOLDER} keeps pictures.
 */
@ExtendWith(ApplicationExtension.class)
class YearsJourneyTest {
  private static final String SECOND = "calibrations/2026-10-20.json";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path parent;

  @SuppressWarnings("NullAway.Init") // the test opens its window
  private Stage stage;

  @SuppressWarnings("NullAway.Init")
  private FaintwindWindow window;

  @Test
  void theRecordComparesTwoCalibrationsAndTheFieldOpensWithItsDay(FxRobot robot)
      throws IOException {
    Path workspace = parent.resolve("Cheese cellar");
    new WindowChoices(100, "light", false, "Ida").write(workspace);
    secondCalibration(Cellar.shipped(workspace, "rind-1"));
    robot.interact(() -> openWindow(workspace));
    Waiting.until(() -> robot.lookup("#instrument-rind-1").tryQuery().isPresent());
    robot.doubleClickOn("#instrument-rind-1");
    Waiting.until(() -> robot.lookup("#step-title").tryQuery().isPresent());
    place(robot, Place.FIELD, () -> robot.lookup("#field-plot").tryQuery().isPresent());
    assertThat(said(robot, "#field-week-log-1"))
        .contains("2026-09-19 11:14", "north-shelf-day.csv");
    picture(robot, "field");
    place(robot, Place.RECORD, () -> robot.lookup("#record-compared").tryQuery().isPresent());
    assertThat(robot.lookup("#record-drift").tryQuery()).isPresent();
    picture(robot, "record");
    robot.interact(() -> stage.close());
  }

  private static String said(FxRobot robot, String id) {
    return robot.lookup(id).queryAs(Labeled.class).getText();
  }

  /** The same formula put in force once more, as if measured in October. */
  private static void secondCalibration(Path folder) throws IOException {
    Path first = folder.resolve("calibrations/2026-09-13.json");
    Files.copy(first, folder.resolve(SECOND));
    Checked<InstrumentView> opened =
        InstrumentView.open(folder, KeptDesigns.withShippedParts()::sheet);
    InstrumentView view = ((Checked.Ok<InstrumentView>) opened).value();
    Enter enter =
        new Enter(
            view,
            Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC),
            Enter.Person.named("Ida Test"));
    CalibrationPutInForce october =
        new CalibrationPutInForce(
            SECOND, Optional.of(OffsetDateTime.parse("2026-10-20T15:00:00+02:00")));
    assertThat(enter.plain(Optional.empty(), october).isOk()).isTrue();
  }

  private void openWindow(Path folder) {
    FaintwindApp.dressProgram();
    stage = new Stage();
    stage.setWidth(Integer.getInteger("years.width", 1024));
    stage.setHeight(Integer.getInteger("years.height", 700));
    window =
        new FaintwindWindow(
            stage,
            Messages.of(Locale.ENGLISH),
            KeptLook.in(folder),
            Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC),
            new ChosenFiles());
    window.show();
  }

  private void place(FxRobot robot, Place place, BooleanSupplier there) {
    robot.interact(() -> window.desk().go().accept(place));
    Waiting.until(there);
  }

  private void picture(FxRobot robot, String name) {
    String folder = System.getProperty("years.pictures", "");
    if (!folder.isEmpty()) {
      robot.interact(
          () -> {
            Node root = stage.getScene().getRoot();
            root.applyCss();
            stage.getScene().getRoot().layout();
            Pictures.keep(stage.getScene(), Path.of(folder, name + ".png"));
          });
    }
  }
}
