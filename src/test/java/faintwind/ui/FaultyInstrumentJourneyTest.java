package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Gate;
import faintwind.guide.checklist.Question;
import faintwind.job.design.KeptDesigns;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.record.Event;
import faintwind.ui.frame.Theme;
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
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
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
          Map.entry("loop", "8,6"),
          Map.entry("loop-mounted", "8,6"),
          Map.entry("lead-to-lead-again", "100,3"),
          Map.entry("lead-to-lead-mounted", "100,3"),
          Map.entry("cable-heater-plus", "0.3"),
          Map.entry("cable-heater-minus", "0.3"),
          Map.entry("cable-signal-plus", "0.3"),
          Map.entry("cable-signal-minus", "0,4"),
          Map.entry("joined-heater-pair", "100,8"),
          Map.entry("joined-signal-pair", "9,2"),
          Map.entry("signal-pair-closed", "9,2"),
          Map.entry("meter-proof-after", "1,00"),
          Map.entry("supply-open", "5,01"));

  private final MovedClock clock =
      new MovedClock(OffsetDateTime.parse("2026-10-23T12:00:00+02:00").toInstant());

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private FxRobot robot;

  @SuppressWarnings("NullAway.Init") // each test has its own
  private Journey journey;

  @BeforeEach
  void begin(FxRobot hands) throws IOException {
    robot = hands;
    journey = new Journey(hands, folder, clock).asked().copy(DEMO, "rind");
  }

  @AfterEach
  void close() {
    journey.close();
  }

  @Test
  void fromAPiercedLeadToHeaterPower() {
    journey.open(1280, 800);
    journey.openInstrument("rind");
    journey.step("heater-insulation");
    Waiting.until(() -> trouble().contains("lead A touches the heated ball"));
    assertThat(trouble())
        .contains("lead B reads more by just the resistor")
        .contains("Next likely")
        .contains("The heater touches the ball")
        .contains("Heater power is locked");
    assertThat(journey.there("#finish-step")).isFalse();
    assertThat(heaterPower().open()).isFalse();
    Waiting.until(() -> journey.there("#tips-picture"));
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
      journey.step(id);
      assertThat(heaterPower().open()).as(id).isFalse();
      work(id);
    }
    assertThat(heaterPower().reasons()).isEmpty();
    assertThat(journey.there("#step-gate")).isFalse();
    assertThat(journey.state("rind").standing(Event.Waived.class)).isEmpty();
  }

  /** After the coat was mended: a better meter, and the three readings once more. */
  private void measureAgain() {
    prove("0.3", "1,01", "10,03");
    journey.go("heater-insulation");
    robot.interact(
        () -> {
          ComboBox<StepView.MeterKind> meters = meters();
          meters.setValue(meters.getItems().get(1));
        });
    Waiting.until(() -> journey.state("rind").last(Event.MeterChosen.class).isPresent());
    prove("0.2", "1.00", "10.00");
    journey.go("heater-insulation");
    journey.fire("#measure-again");
    journey.type("lead-a-ball", "OL 20M");
    journey.type("lead-b-ball", "> 20 M");
    journey.type("lead-to-lead", "100,2");
    Waiting.until(() -> journey.there("#finish-step"));
    assertThat(journey.words("#row-lead-a-ball"))
        .contains("Before: 27 Ω")
        .contains("Made-up builder");
    keep("step-retest");
    assertThat(journey.state("rind").history("heater-insulation", "lead-a-ball")).hasSize(2);
    journey.fire("#finish-step");
    leaves("heater-insulation");
  }

  /**
   * The meter on its known resistors once more: the old one after its readings, the new one before.
   */
  private void prove(String tips, String one, String ten) {
    journey.go("prove-meter");
    journey.type("meter-tips", tips);
    journey.type("meter-proof-1", one);
    journey.type("meter-proof-10", ten);
    Waiting.until(() -> journey.there("#finish-step"));
    journey.fire("#finish-step");
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
    step.cautions().forEach(caution -> journey.fire("#caution-" + caution.id() + "-read"));
    for (Question question : step.asks().questions()) {
      Question.Choice choice =
          question.choices().stream().filter(c -> c.stop().isEmpty()).findFirst().orElseThrow();
      journey.fire("#answer-" + question.id() + "-" + choice.id());
    }
    step.asks().readings().forEach(r -> journey.type(r.id(), SOUND.getOrDefault(r.id(), "OL 20M")));
    step.asks()
        .clock()
        .ifPresent(
            c -> {
              journey.fire("#start-clock");
              Waiting.until(() -> journey.state("rind").clock(id, c.id()).isPresent());
              clock.move(Duration.ofHours(25));
              robot.interact(() -> journey.window().desk().look().textPct().set(100));
            });
    step.asks()
        .photo()
        .ifPresent(
            p -> {
              journey.choose(photo());
              journey.fire("#add-photo");
            });
    journey.fire("#finish-step");
    leaves(id);
  }

  private static Path photo() {
    try (Stream<Path> all = Files.list(DEMO.resolve("photos"))) {
      return all.findFirst().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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

  private String trouble() {
    return journey.words("#step-trouble");
  }

  private void leaves(String id) {
    Waiting.until(() -> !journey.stepId().equals(id));
    Waiting.until(
        () ->
            journey
                .state("rind")
                .last(Event.StepOpened.class)
                .orElseThrow()
                .inStep(journey.stepId()));
  }

  private void keep(String name) {
    for (Theme theme : List.of(Theme.DARK, Theme.LIGHT)) {
      robot.interact(() -> journey.window().desk().look().theme().set(theme));
      robot.interact(
          () -> {
            journey.stage().getScene().getRoot().applyCss();
            journey.stage().getScene().getRoot().layout();
            String file = name + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png";
            Pictures.keep(journey.stage().getScene(), Path.of("target/pictures/" + file));
          });
    }
  }
}
