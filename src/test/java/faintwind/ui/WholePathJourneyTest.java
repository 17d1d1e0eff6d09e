package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.calibration.CalibrationFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.WindowChoices;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.make.StepScreen;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** From the empty window to a calibration in force and a build log, by ids. */
@ExtendWith(ApplicationExtension.class)
class WholePathJourneyTest {
  private static final Path DEMO = Path.of("demo-projects/cellar");
  private static final int FIT_S = 180;

  private final ChosenFiles files = new ChosenFiles();
  private OffsetDateTime time = Cellar.NOW;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // the test opens its window
  private Stage stage;

  @SuppressWarnings("NullAway.Init")
  private FaintwindWindow window;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private FxRobot robot;

  @AfterEach
  void close() {
    robot.interact(() -> stage.close());
  }

  @Test
  void fromTheEmptyWindowToACalibrationInForceAndABuildLog(FxRobot hands) throws IOException {
    robot = hands;
    new WindowChoices(100, "light", false, "Ida").write(folder);
    openWindow();
    begin();
    takeTheDesign();
    stageOne();
    robot.interact(() -> stage.close());
    anotherSession("check-parts", "plating-needed");
    openWindow();
    openInstrument();
    fire("#go-on");
    step("prove-meter");
    type("meter-tips", "0,2");
    type("meter-proof-1", "1,00");
    type("meter-proof-10", "10,02");
    finish("prove-meter");
    step("heater-alone");
    type("heater-alone", "100,2");
    finish("heater-alone");
    robot.interact(() -> stage.close());
    anotherSession("heater-alone", "glue-heater");
    openWindow();
    openInstrument();
    bringInTheRuns();
    fitAndPutInForce();
    writeTheBuildLog();
  }

  private void openWindow() {
    robot.interact(
        () -> {
          FaintwindApp.dressProgram();
          stage = new Stage();
          window =
              new FaintwindWindow(
                  stage, Messages.of(Locale.ENGLISH), KeptLook.in(folder), clock(), files);
          window.show();
        });
  }

  private Clock clock() {
    return Clock.fixed(time.toInstant(), ZoneOffset.UTC);
  }

  private void begin() {
    fire("#start-parts");
    Waiting.until(() -> there("#new-name"));
    robot.clickOn("#new-name").write("Rind 7");
    fire("#begin");
    Waiting.until(() -> there("#design-title"));
  }

  private void takeTheDesign() {
    fire("#design-page-design");
    fire("#design-keep");
    Waiting.until(() -> state().last(Event.DesignChosen.class).isPresent());
    fire("#place-make");
    Waiting.until(() -> there("#step-title"));
  }

  private void stageOne() {
    step("choose-use");
    fire("#answer-group-no");
    fire("#answer-place-indoors");
    finish("choose-use");
    step("choose-design");
    fire("#caution-hot-ball-read");
    fire("#caution-children-read");
    fire("#answer-sheet-none");
    finish("choose-design");
    step("check-clearance");
    fire("#answer-fits-yes");
    finish("check-clearance");
    step("get-parts");
    fire("#caution-lithium-read");
    fire("#caution-adapter-read");
    finish("get-parts");
    step("check-parts");
    type("diameter-a", "12.70");
    type("diameter-b", "12,69");
    finish("check-parts");
  }

  /** What the demo's builder entered after one step and up to another, by the same job. */
  private void anotherSession(String after, String last) throws IOException {
    List<Standing<? extends Event>> lines = new InstrumentFolder(DEMO).open().state().lines();
    boolean begun = false;
    for (Standing<? extends Event> line : lines) {
      boolean finished = line.event() instanceof Event.StepFinished;
      String step = line.step().orElse("");
      if (begun && line.event() instanceof Event.FileAdded) {
        return;
      }
      if (begun && !step.isEmpty()) {
        enter(step, line.event());
      }
      if (finished && step.equals(last)) {
        return;
      }
      begun = begun || (finished && step.equals(after));
    }
  }

  private void enter(String step, Event event) throws IOException {
    time = time.plusMinutes(1);
    InstrumentView view =
        InstrumentView.open(instrument(), KeptDesigns.withShippedParts()::sheet)
            .fold((value, notes) -> value, problems -> failed(problems.toString()));
    Checked<?> answer = entered(new Enter(view, clock(), Enter.Person.named("Ida")), step, event);
    assertThat(answer.problems()).as("%s, %s", step, event).isEmpty();
    if (event instanceof Event.ClockStarted clock) {
      time = time.plus(Duration.ofSeconds(Math.round(clock.duration_s())));
    }
  }

  private static InstrumentView failed(String why) {
    throw new AssertionError(why);
  }

  private static Checked<?> entered(Enter enter, String step, Event event) throws IOException {
    if (event instanceof Event.StepOpened) {
      return enter.open(step);
    } else if (event instanceof Event.CautionAcknowledged caution) {
      return enter.acknowledge(step, caution.caution());
    } else if (event instanceof Event.QuestionAnswered answered) {
      return enter.answer(step, answered.question(), answered.choice());
    } else if (event instanceof Event.ReadingEntered reading) {
      return enter.reading(step, reading.reading(), reading.typed());
    } else if (event instanceof Event.ClockStarted) {
      return enter.startClock(step);
    } else if (event instanceof Event.PhotoAdded photo) {
      return enter.photo(step, DEMO.resolve(photo.file()), photo.caption());
    } else if (event instanceof Event.StepFinished) {
      return enter.finish(step);
    }
    return Checked.ok(step);
  }

  private void openInstrument() {
    Waiting.until(() -> there("#instrument-rind-7"));
    robot.doubleClickOn("#instrument-rind-7");
    Waiting.until(() -> there("#step-title"));
  }

  private void bringInTheRuns() {
    fire("#place-turntable");
    fire("#caution-spinning-arm-read");
    files.choose(DEMO.resolve("runs/first-session/runs.csv"));
    fire("#turntable-way-file");
    fire("#turntable-drop-choose");
    Waiting.until(() -> there("#recording-1"));
    fire("#turntable-fit");
  }

  private void fitAndPutInForce() {
    fire("#formula-fit");
    leaveTheFitAndComeBack();
    Waiting.within(FIT_S, () -> there("#formula-force"));
    fire("#formula-force");
    Waiting.until(() -> state().last(Event.CalibrationPutInForce.class).isPresent());
    String file = state().last(Event.CalibrationPutInForce.class).orElseThrow().event().file();
    try {
      Path kept = instrument().resolve(file);
      assertThat(CalibrationFile.read(kept, file).problems()).isEmpty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The fit goes on: other places keep their Next line, and this one shows it again. */
  private void leaveTheFitAndComeBack() {
    Waiting.until(() -> there("#next-cancel"));
    fire("#place-field");
    Waiting.until(() -> there("#field-calibration-choose"));
    Waiting.until(() -> !there("#next-cancel"));
    fire("#place-formula");
    Waiting.until(() -> there("#next-cancel"));
  }

  private void writeTheBuildLog() throws IOException {
    Path log = folder.resolve("log.html");
    fire("#place-record");
    files.choose(log);
    fire("#record-log");
    Waiting.until(() -> Files.exists(log));
    assertThat(Files.readString(log)).contains("Rind 7").contains("100,2");
  }

  private Path instrument() {
    return folder.resolve("rind-7");
  }

  private InstrumentState state() {
    try {
      return new InstrumentFolder(instrument()).open().state();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Waits until a step is on the sheet, to which the window goes by itself. */
  private void step(String id) {
    Waiting.until(
        () ->
            window
                .screen()
                .filter(screen -> screen instanceof StepScreen steps && steps.stepId().equals(id))
                .isPresent());
  }

  private void finish(String id) {
    fire("#finish-step");
    Waiting.until(() -> state().finished(id).isPresent());
  }

  private void type(String reading, String typed) {
    Waiting.until(() -> there("#reading-" + reading));
    robot.clickOn("#reading-" + reading).write(typed);
    robot.press(KeyCode.TAB).release(KeyCode.TAB);
  }

  /** Waits for a button or link and presses it, in one go: the screens are drawn anew often. */
  private void fire(String id) {
    Presses.fire(robot, id);
  }

  private boolean there(String id) {
    return Presses.there(robot, id);
  }
}
