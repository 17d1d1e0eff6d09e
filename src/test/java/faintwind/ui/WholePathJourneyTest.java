package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.calibration.CalibrationFile;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.record.Event;
import faintwind.record.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
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

  private final MovedClock clock = new MovedClock(Cellar.NOW.toInstant());

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    journey = new Journey(hands, folder, clock).asked();
  }

  @AfterEach
  void close() {
    journey.close();
  }

  @Test
  void fromTheEmptyWindowToACalibrationInForceAndABuildLog() throws IOException {
    wholePath();
  }

  @Tag("long")
  @Test
  void theSamePathWithTheKeyboardAlone() throws IOException {
    journey.withKeysAlone();
    wholePath();
  }

  private void wholePath() throws IOException {
    journey.open();
    begin();
    takeTheDesign();
    stageOne();
    journey.close();
    anotherSession("check-parts", "plating-needed");
    journey.open();
    journey.openInstrument("rind-7");
    journey.fire("#go-on");
    journey.step("prove-meter");
    journey.fire("#caution-solvent-read");
    journey.type("meter-tips", "0,2");
    journey.type("meter-proof-1", "1,00");
    journey.type("meter-proof-10", "10,02");
    finish("prove-meter");
    journey.step("heater-alone");
    journey.type("heater-alone", "100,2");
    finish("heater-alone");
    journey.close();
    anotherSession("heater-alone", "glue-heater");
    journey.open();
    journey.openInstrument("rind-7");
    bringInTheRuns();
    fitAndPutInForce();
    writeTheBuildLog();
  }

  private void begin() {
    journey.fire("#start-parts");
    Waiting.until(() -> journey.there("#new-name"));
    journey.write("#new-name", "Rind 7");
    journey.fire("#begin");
    Waiting.until(() -> journey.there("#design-title"));
  }

  private void takeTheDesign() {
    journey.fire("#design-page-design");
    journey.fire("#design-keep");
    Waiting.until(() -> journey.state("rind-7").last(Event.DesignChosen.class).isPresent());
    journey.fire("#place-make");
    Waiting.until(() -> journey.there("#step-title"));
  }

  private void stageOne() {
    journey.step("choose-use");
    journey.fire("#answer-group-no");
    journey.fire("#answer-place-indoors");
    finish("choose-use");
    journey.step("choose-design");
    journey.fire("#caution-hot-ball-read");
    journey.fire("#caution-children-read");
    journey.fire("#answer-sheet-none");
    finish("choose-design");
    journey.step("check-clearance");
    journey.fire("#answer-fits-yes");
    finish("check-clearance");
    journey.step("get-parts");
    journey.fire("#caution-lithium-read");
    journey.fire("#caution-adapter-read");
    finish("get-parts");
    journey.step("check-parts");
    journey.type("diameter-a", "12.70");
    journey.type("diameter-b", "12,69");
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
    clock.move(Duration.ofMinutes(1));
    InstrumentView view =
        InstrumentView.open(instrument(), KeptDesigns.withShippedParts()::sheet)
            .fold((value, notes) -> value, problems -> failed(problems.toString()));
    Checked<?> answer = entered(new Enter(view, clock, Enter.Person.named("Ida")), step, event);
    assertThat(answer.problems()).as("%s, %s", step, event).isEmpty();
    if (event instanceof Event.ClockStarted started) {
      clock.move(Duration.ofSeconds(Math.round(started.duration_s())));
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

  private void bringInTheRuns() {
    journey.fire("#place-turntable");
    journey.fire("#caution-spinning-arm-read");
    journey.choose(DEMO.resolve("runs/first-session/runs.csv"));
    journey.fire("#turntable-way-file");
    journey.fire("#turntable-drop-choose");
    Waiting.until(() -> journey.there("#recording-1"));
    journey.fire("#turntable-fit");
  }

  private void fitAndPutInForce() {
    journey.fire("#formula-fit");
    leaveTheFitAndComeBack();
    Waiting.within(FIT_S, () -> journey.there("#formula-force"));
    journey.fire("#formula-force");
    Waiting.until(
        () -> journey.state("rind-7").last(Event.CalibrationPutInForce.class).isPresent());
    String file =
        journey
            .state("rind-7")
            .last(Event.CalibrationPutInForce.class)
            .orElseThrow()
            .event()
            .file();
    try {
      Path kept = instrument().resolve(file);
      assertThat(CalibrationFile.read(kept, file).problems()).isEmpty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The fit goes on: other places keep their Next line, and this one shows it again. */
  private void leaveTheFitAndComeBack() {
    Waiting.until(() -> journey.there("#next-cancel"));
    journey.fire("#place-field");
    Waiting.until(() -> journey.there("#field-calibration-choose"));
    Waiting.until(() -> !journey.there("#next-cancel"));
    journey.fire("#place-formula");
    Waiting.until(() -> journey.there("#next-cancel"));
  }

  private void writeTheBuildLog() throws IOException {
    Path log = folder.resolve("log.html");
    journey.fire("#place-record");
    journey.choose(log);
    journey.fire("#record-log");
    Waiting.until(() -> Files.exists(log));
    assertThat(Files.readString(log)).contains("Rind 7").contains("100,2");
  }

  private Path instrument() {
    return folder.resolve("rind-7");
  }

  private void finish(String id) {
    journey.fire("#finish-step");
    Waiting.until(() -> journey.state("rind-7").finished(id).isPresent());
  }
}
