package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.Gate;
import faintwind.guide.checklist.Question;
import faintwind.job.WindowChoices;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.ui.frame.KeptLook;
import faintwind.ui.frame.Theme;
import faintwind.ui.make.StepScreen;
import faintwind.ui.make.StepView;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * The shipped faulty instrument: the readings alone name the fault, it is repaired and measured
 * again, and heater power opens when every check is good.
 */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class FaultyInstrumentJourneyTest {
  private static final Path DEMO = Path.of("demo-projects/cellar-door");
  private static final Map<String, String> SOUND =
      Map.ofEntries(
          Map.entry("loop", "23,4"),
          Map.entry("loop-mounted", "23,4"),
          Map.entry("lead-to-lead-again", "100,3"),
          Map.entry("lead-to-lead-mounted", "100,3"),
          Map.entry("cable-heater-plus", "0.3"),
          Map.entry("cable-heater-minus", "0.3"),
          Map.entry("cable-signal-plus", "0.3"),
          Map.entry("cable-signal-minus", "0,4"),
          Map.entry("joined-heater-pair", "100,8"),
          Map.entry("joined-signal-pair", "23,9"),
          Map.entry("meter-proof-after", "1,00"),
          Map.entry("supply-open", "5,01"));

  private final ChosenFiles files = new ChosenFiles();
  private final MovedClock clock =
      new MovedClock(OffsetDateTime.parse("2026-10-22T09:00:00+02:00").toInstant());

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
  void fromAPiercedLeadToHeaterPower(FxRobot hands) throws IOException {
    robot = hands;
    copyDemo();
    new WindowChoices(100, "light", false, "Ida").write(folder);
    openWindow(1280, 800);
    Waiting.until(() -> there("#instrument-rind"));
    robot.doubleClickOn("#instrument-rind");
    step("heater-insulation");
    Waiting.until(() -> trouble().contains("lead A touches the heated ball"));
    assertThat(trouble())
        .contains("lead B reads more by just the resistor")
        .contains("Next likely")
        .contains("The heater touches the ball")
        .contains("Heater power is locked");
    assertThat(there("#finish-step")).isFalse();
    assertThat(heaterPower().open()).isFalse();
    Waiting.until(() -> there("#tips-picture"));
    keep("step-stop");
    measureAgain();
    for (String id :
        List.of(
            "glue-junctions",
            "loop-insulation",
            "mount-pair",
            "mounted-check",
            "make-cable",
            "cable-check",
            "join-cable",
            "joined-check",
            "ready-supply")) {
      step(id);
      assertThat(heaterPower().open()).as(id).isFalse();
      work(id);
    }
    assertThat(heaterPower().reasons()).isEmpty();
    assertThat(there("#step-gate")).isFalse();
    assertThat(state().standing(Event.Waived.class)).isEmpty();
  }

  /** After the coat was mended: a better meter, and the three readings once more. */
  private void measureAgain() {
    prove("0.3", "1,01", "10,03");
    go("heater-insulation");
    robot.interact(
        () -> {
          ComboBox<StepView.MeterKind> meters = meters();
          meters.setValue(meters.getItems().get(1));
        });
    Waiting.until(() -> state().last(Event.MeterChosen.class).isPresent());
    prove("0.2", "1.00", "10.00");
    go("heater-insulation");
    fire("#measure-again");
    type("lead-a-ball", "OL 20M");
    type("lead-b-ball", "> 20 M");
    type("lead-to-lead", "100,2");
    Waiting.until(() -> there("#finish-step"));
    assertThat(words("#row-lead-a-ball")).contains("Before: 27 Ω").contains("Made-up builder");
    keep("step-retest");
    assertThat(state().history("heater-insulation", "lead-a-ball")).hasSize(2);
    fire("#finish-step");
    leaves("heater-insulation");
  }

  /**
   * The meter on its known resistors once more: the old one after its readings, the new one before.
   */
  private void prove(String tips, String one, String ten) {
    go("prove-meter");
    type("meter-tips", tips);
    type("meter-proof-1", one);
    type("meter-proof-10", ten);
    Waiting.until(() -> there("#finish-step"));
    fire("#finish-step");
    leaves("prove-meter");
  }

  @SuppressWarnings("unchecked")
  private ComboBox<StepView.MeterKind> meters() {
    return (ComboBox<StepView.MeterKind>) robot.lookup("#meter-choice").queryAs(ComboBox.class);
  }

  /** Whatever a step asks for, until it is finished and the window has gone on. */
  private void work(String id) {
    InstrumentView view = view();
    var step = view.checklist().step(id).orElseThrow();
    step.cautions().forEach(caution -> fire("#caution-" + caution.id() + "-read"));
    for (Question question : step.asks().questions()) {
      Question.Choice choice =
          question.choices().stream().filter(c -> c.stop().isEmpty()).findFirst().orElseThrow();
      fire("#answer-" + question.id() + "-" + choice.id());
    }
    step.asks().readings().forEach(r -> type(r.id(), SOUND.getOrDefault(r.id(), "OL 20M")));
    step.asks()
        .clock()
        .ifPresent(
            c -> {
              fire("#start-clock");
              Waiting.until(() -> state().clock(id, c.id()).isPresent());
              clock.move(Duration.ofHours(25));
              robot.interact(() -> window.desk().look().textPct().set(100));
            });
    step.asks()
        .photo()
        .ifPresent(
            p -> {
              files.choose(photo());
              fire("#add-photo");
            });
    fire("#finish-step");
    leaves(id);
  }

  private static Path photo() {
    try (Stream<Path> all = Files.list(DEMO.resolve("photos"))) {
      return all.findFirst().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void copyDemo() throws IOException {
    Path to = folder.resolve("rind");
    try (Stream<Path> all = Files.walk(DEMO)) {
      for (Path file : all.toList()) {
        Path target = to.resolve(DEMO.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  private void openWindow(int wide, int high) {
    robot.interact(
        () -> {
          FaintwindApp.dressProgram();
          stage = new Stage();
          stage.setWidth(wide);
          stage.setHeight(high);
          window =
              new FaintwindWindow(
                  stage, Messages.of(Locale.ENGLISH), KeptLook.in(folder), clock, files);
          window.show();
        });
  }

  private Gate.Answer heaterPower() {
    InstrumentView view = view();
    return Gate.check(
        view.checklist(), Gate.HEATER_POWER, view.situation(OffsetDateTime.now(clock)));
  }

  private InstrumentView view() {
    try {
      Checked<InstrumentView> opened =
          InstrumentView.open(folder.resolve("rind"), KeptDesigns.withShippedParts()::sheet);
      return ((Checked.Ok<InstrumentView>) opened).value();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private InstrumentState state() {
    try {
      return new InstrumentFolder(folder.resolve("rind")).open().state();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String trouble() {
    return words("#step-trouble");
  }

  private String words(String id) {
    Optional<Node> part = robot.lookup(id).tryQuery();
    return part.map(
            node ->
                robot.from(node).lookup(".label").queryAllAs(Labeled.class).stream()
                    .map(Labeled::getText)
                    .collect(Collectors.joining(" ")))
        .orElse("");
  }

  private String stepId() {
    return window.screen().map(s -> ((StepScreen) s).stepId()).orElse("");
  }

  private void go(String id) {
    robot.interact(
        () ->
            window
                .screen()
                .filter(StepScreen.class::isInstance)
                .map(StepScreen.class::cast)
                .ifPresent(steps -> steps.openStep(id)));
    step(id);
  }

  private void step(String id) {
    Waiting.until(
        () ->
            window
                .screen()
                .filter(s -> s instanceof StepScreen steps && steps.stepId().equals(id))
                .isPresent());
  }

  private void leaves(String id) {
    Waiting.until(() -> !stepId().equals(id));
    Waiting.until(() -> state().last(Event.StepOpened.class).orElseThrow().inStep(stepId()));
  }

  private void type(String reading, String typed) {
    Waiting.until(() -> there("#reading-" + reading));
    robot.interact(
        () -> {
          TextInputControl box =
              robot.lookup("#reading-" + reading).queryAs(TextInputControl.class);
          box.requestFocus();
          box.selectAll();
        });
    robot.write(typed);
    robot.press(KeyCode.TAB).release(KeyCode.TAB);
  }

  private void fire(String id) {
    Presses.fire(robot, id);
  }

  private boolean there(String id) {
    return Presses.there(robot, id);
  }

  private void keep(String name) {
    for (Theme theme : List.of(Theme.DARK, Theme.LIGHT)) {
      robot.interact(() -> window.desk().look().theme().set(theme));
      robot.interact(
          () -> {
            stage.getScene().getRoot().applyCss();
            stage.getScene().getRoot().layout();
            String file = name + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png";
            Pictures.keep(stage.getScene(), Path.of("target/pictures/" + file));
          });
    }
  }
}
