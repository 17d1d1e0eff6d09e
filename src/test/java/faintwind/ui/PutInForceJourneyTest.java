package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.Sha256;
import faintwind.guide.InForceGate;
import faintwind.job.JobWatch;
import faintwind.job.design.KeptDesigns;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.KeepFormula;
import faintwind.job.record.Enter;
import faintwind.job.record.InstrumentView;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.Waived;
import faintwind.ui.frame.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * A calibration whose signal is a fifth too large for what was built: it is held up, with what is
 * open in the build beside it, until somebody explains it by name and reason.
 */
@ExtendWith(ApplicationExtension.class)
class PutInForceJourneyTest {
  private static final Clock CLOCK = Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC);
  private static final double TOO_LARGE = 1.2;
  private static final String REASON = "the amplifier was set to another gain, found on 3 November";

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @Test
  void aFitOffByAFifthStandsInTheWayUntilItIsExplained(FxRobot robot) throws IOException {
    Path cellar = Cellar.shipped(folder, "rind-1");
    String file = fittedToALargerSignal(cellar);
    openAgain(cellar, "build-beam");
    Journey journey = Journey.of(robot, folder).asked();
    journey.open(1280, 800);
    journey.openInstrument("rind-1");
    robot.interact(() -> journey.window().desk().go().accept(Place.FORMULA));
    Waiting.until(() -> journey.there("#formula-gate") && journey.there("#formula-loss"));
    assertThat(journey.there("#formula-force")).isFalse();
    assertThat(journey.words("#next-sentence")).isEqualTo("This formula disagrees with the build.");
    assertThat(journey.words("#formula-open")).contains("Open in the build", "Not finished:");
    assertThat(journey.words("#formula-gate")).contains("Difference in still air", "Suspect");
    journey.pictures("in-force-held");
    type(robot, "ok");
    assertThat(robot.lookup("#formula-build-explain").query().isDisabled()).isTrue();
    type(robot, REASON);
    Waiting.until(() -> !robot.lookup("#formula-build-explain").<Node>query().isDisabled());
    journey.fire("#formula-build-explain");
    Waiting.until(
        () ->
            journey
                .state("rind-1")
                .last(CalibrationPutInForce.class)
                .filter(line -> line.event().file().equals(file))
                .isPresent());
    Waived why = journey.state("rind-1").last(Waived.class).orElseThrow().event();
    assertThat(why.what()).isEqualTo(InForceGate.EXPLAINED + file);
    assertThat(why.reason()).isEqualTo(REASON);
    assertThat(journey.state("rind-1").last(Waived.class).orElseThrow().who()).isEqualTo("Ida");
    assertThatTheReportSaysSo(journey, cellar);
    journey.close();
  }

  private static void assertThatTheReportSaysSo(Journey journey, Path cellar) throws IOException {
    Waiting.until(() -> journey.there("#formula-build-log"));
    journey.fire("#formula-build-log");
    Waiting.within(90, () -> journey.words("#next-detail").contains("build-log.html"));
    String page = Files.readString(cellar.resolve("reports/build-log.html"));
    assertThat(page.substring(0, page.indexOf("<ol class=\"contents\">")))
        .contains("disagree; explained by Ida", REASON);
    journey.pictures("in-force-explained");
  }

  private static void type(FxRobot robot, String reason) {
    robot.interact(
        () -> robot.lookup("#formula-build-reason").queryAs(TextField.class).setText(reason));
  }

  /** Runs of the shipped session with a larger signal, fitted and entered; not in force. */
  private static String fittedToALargerSignal(Path cellar) throws IOException {
    Path session = cellar.resolve("runs/first-session");
    Path again = Files.createDirectories(cellar.resolve("runs/second-session"));
    for (String name : List.of("session.csv", "zero.csv")) {
      Files.write(again.resolve(name), larger(Files.readAllLines(session.resolve(name))));
    }
    for (String name : List.of("runs.csv", "chain.json")) {
      Files.copy(session.resolve(name), again.resolve(name));
    }
    Path table = again.resolve("runs.csv");
    enter(
        cellar,
        List.of(
            new FileAdded(FileRole.RUNS_TABLE, "runs/second-session/runs.csv", Sha256.of(table))));
    Calibrate.Settings none = new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty());
    Messages words = Messages.of(Locale.ENGLISH);
    KeepFormula job = new KeepFormula(cellar, new Calibrate(CLOCK, words, none));
    KeepFormula.Kept kept =
        job.fit(table, JobWatch.NOBODY)
            .fold(
                (made, notes) -> made,
                problems -> {
                  throw new AssertionError(problems);
                });
    enter(cellar, job.events(kept));
    return kept.file();
  }

  private static List<String> larger(List<String> lines) {
    List<String> larger = new ArrayList<>();
    int column = -1;
    for (String line : lines) {
      String[] cells = line.split(",", -1);
      if (line.startsWith("#")) {
        larger.add(line);
      } else if (column < 0) {
        column = List.of(cells).indexOf("signal_uV");
        larger.add(line);
      } else {
        double signal = TOO_LARGE * Double.parseDouble(cells[column]);
        cells[column] = String.format(Locale.ROOT, "%.3f", signal);
        larger.add(String.join(",", cells));
      }
    }
    return larger;
  }

  private static void enter(Path cellar, List<Event> events) throws IOException {
    assertThat(enter(view(cellar)).plain(Optional.empty(), events).isOk()).isTrue();
  }

  /** Takes back that a step is finished: it is open in the build. */
  private static void openAgain(Path cellar, String step) throws IOException {
    InstrumentView view = view(cellar);
    String finished = view.state().finished(step).orElseThrow().entry();
    assertThat(enter(view).correct(finished, "it still sags", Optional.empty()).isOk()).isTrue();
  }

  private static InstrumentView view(Path cellar) throws IOException {
    return InstrumentView.open(cellar, KeptDesigns.withShippedParts()::sheet)
        .fold(
            (opened, notes) -> opened,
            problems -> {
              throw new AssertionError(problems);
            });
  }

  private static Enter enter(InstrumentView view) {
    return new Enter(view, CLOCK, Enter.Person.named("Ida Test"));
  }
}
