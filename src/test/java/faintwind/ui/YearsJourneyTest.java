package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.Sha256;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.Rechecked;
import faintwind.ui.frame.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * An instrument over the years: its logs by the week, two calibrations of it against each other, a
 * check in ten minutes, when it is due, and runs that do not say when they were measured.
 */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class YearsJourneyTest {
  private static final String FIRST = "calibrations/2026-09-13.json";
  private static final String SECOND = "calibrations/2026-10-20.json";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void theRecordComparesTwoCalibrationsAndTheFieldOpensWithItsDay(FxRobot robot)
      throws IOException {
    Path cellar = Cellar.shipped(folder, "rind-1");
    secondCalibration(cellar, "2026-10-20T15:00:00+02:00");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    Waiting.until(() -> journey.there("#instrument-rind-1"));
    assertThat(journey.words("#instrument-rind-1")).contains("20 October 2027");
    journey.pictures("home");
    journey.openInstrument("rind-1");
    place(robot, journey, Place.FIELD, () -> journey.there("#field-plot"));
    assertThat(said(robot, "#field-week-log-1"))
        .contains("19 September 2026, ", "north-shelf-day.csv");
    place(robot, journey, Place.RECORD, () -> journey.there("#record-compared"));
    assertThat(journey.there("#record-drift")).isTrue();
    assertThat(journey.there("#record-changes")).isTrue();
    assertThatTheOtherTwoCanBeChosen(robot, journey);
    recheck(journey, cellar);
    place(robot, journey, Place.FORMULA, () -> journey.there("#formula-loss"));
    Waiting.until(() -> journey.words("#next-detail").contains("20 October 2027"));
    takeTheFormulaElsewhere(journey);
    journey.close();
  }

  private void takeTheFormulaElsewhere(Journey journey) throws IOException {
    Path target = folder.resolve("on-the-logger.py");
    journey.choose(target);
    journey.fire("#export-micropython");
    Waiting.until(() -> journey.words("#formula-export-answer").contains("on-the-logger.py"));
    assertThat(target).content().contains("Rind 1, north shelf", "SHA-256");
    journey.pictures("formula-export");
  }

  private static void assertThatTheOtherTwoCanBeChosen(FxRobot robot, Journey journey) {
    ComboBox<?> earlier = robot.lookup("#record-earlier").queryAs(ComboBox.class);
    assertThat(earlier.getItems()).hasToString("[" + FIRST + ", " + SECOND + "]");
    robot.interact(() -> earlier.getSelectionModel().select(1));
    Waiting.until(() -> journey.words("#record-calibrations").contains("En 0.00"));
  }

  /** Two runs of the shipped session stand for ten minutes at the arm. */
  private void recheck(Journey journey, Path cellar) throws IOException {
    Path session = cellar.resolve("runs/first-session");
    List<String> table = Files.readAllLines(session.resolve("runs.csv"));
    List<String> few = new ArrayList<>(List.of(table.get(0)));
    table.stream().filter(row -> row.startsWith("spin")).limit(2).forEach(few::add);
    Path runs = Files.write(folder.resolve("check/runs.csv"), copied(session, few));
    journey.choose(runs);
    journey.fire("#recheck-choose");
    Waiting.until(() -> journey.words("#recheck-answer").contains("The calibration still holds."));
    assertThat(journey.words("#recheck-answer")).contains("spin01", "spin02", "they agree");
    Waiting.until(
        () ->
            journey
                .state("rind-1")
                .last(Rechecked.class)
                .filter(done -> done.event().agrees())
                .filter(done -> Files.isRegularFile(cellar.resolve(done.event().runs())))
                .isPresent());
    assertThat(journey.words("#recheck-answer")).contains("The calibration still holds.");
    journey.pictures("record");
  }

  /** The recordings beside the table that names them. */
  private List<String> copied(Path session, List<String> table) throws IOException {
    Path check = Files.createDirectories(folder.resolve("check"));
    for (String name : List.of("session.csv", "chain.json")) {
      Files.copy(session.resolve(name), check.resolve(name));
    }
    return table;
  }

  @Test
  void aLogThatSpansTwoCalibrationsSaysSo(FxRobot robot) throws IOException {
    secondCalibration(Cellar.shipped(folder, "rind-1"), "2026-09-19T20:00:00+02:00");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-1");
    place(robot, journey, Place.FIELD, () -> journey.there("#field-plot"));
    assertThat(journey.words("#field-problems")).contains(FIRST, SECOND);
    journey.pictures("field-two-calibrations");
    journey.close();
  }

  @Test
  void theDayIsAskedWhereTheRecordingsDoNotSayIt(FxRobot robot) throws IOException {
    undated(Cellar.shipped(folder, "rind-1"));
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-1");
    place(robot, journey, Place.FORMULA, () -> journey.there("#measured-day"));
    Waiting.until(() -> journey.there("#formula-again"));
    type(robot, "#measured-day", "2027-03-04");
    assertThat(journey.words("#measured-form")).contains("A day in the past is expected");
    type(robot, "#measured-day", "2026-11-03 14:30");
    assertThat(journey.words("#measured-form")).contains("3 November 2026, 14:30 UTC");
    type(robot, "#measured-operator", "Ida Test");
    type(robot, "#measured-place", "the barn");
    journey.pictures("formula-measured");
    journey.close();
  }

  /** The shipped runs without a date, brought in as if they were next year's. */
  private static void undated(Path cellar) throws IOException {
    Path session = cellar.resolve("runs/first-session");
    Path again = Files.createDirectories(cellar.resolve("runs/undated"));
    for (String name : List.of("session.csv", "zero.csv")) {
      List<String> lines = Files.readAllLines(session.resolve(name));
      Files.write(
          again.resolve(name), lines.stream().filter(l -> !l.startsWith("# start")).toList());
    }
    Files.copy(session.resolve("chain.json"), again.resolve("chain.json"));
    String table = Files.readString(session.resolve("runs.csv"));
    Path runs = Files.writeString(again.resolve("runs.csv"), table.replace("made up", "next year"));
    enter(
        cellar,
        view ->
            view.plain(
                Optional.empty(),
                new FileAdded(FileRole.RUNS_TABLE, "runs/undated/runs.csv", Sha256.of(runs))));
  }

  private static String said(FxRobot robot, String id) {
    return robot.lookup(id).queryAs(Labeled.class).getText();
  }

  private static void type(FxRobot robot, String field, String text) {
    robot.interact(() -> robot.lookup(field).queryAs(TextField.class).setText(text));
  }

  /** The same formula put in force once more, as if measured at another time. */
  private static void secondCalibration(Path cellar, String from) throws IOException {
    Files.copy(cellar.resolve(FIRST), cellar.resolve(SECOND));
    enter(
        cellar,
        enter ->
            enter.plain(
                Optional.empty(),
                new CalibrationPutInForce(SECOND, Optional.of(OffsetDateTime.parse(from)))));
  }

  private interface Entry {
    Checked<?> into(Enter enter) throws IOException;
  }

  private static void enter(Path cellar, Entry entry) throws IOException {
    Checked<InstrumentView> opened =
        InstrumentView.open(cellar, KeptDesigns.withShippedParts()::sheet);
    Enter enter =
        new Enter(
            ((Checked.Ok<InstrumentView>) opened).value(),
            Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC),
            Enter.Person.named("Ida Test"));
    assertThat(entry.into(enter).isOk()).isTrue();
  }

  private static void place(FxRobot robot, Journey journey, Place place, BooleanSupplier there) {
    robot.interact(() -> journey.window().desk().go().accept(place));
    Waiting.until(there);
  }
}
